package rules

import "foldrow/engine"

// decimal reads "12", "-0.5" or "46.0637" exactly. It is here because the
// tables hold over a thousand numbers and are read at every start.
func decimal(s string) (engine.Num, bool) {
	neg := len(s) > 0 && s[0] == '-'
	if neg {
		s = s[1:]
	}
	if s == "" || len(s) > 16 || s[0] == '.' || s[len(s)-1] == '.' {
		return engine.Num{}, false
	}
	var n, scale int64 = 0, 0
	for i := 0; i < len(s); i++ {
		switch c := s[i]; {
		case c == '.' && scale == 0:
			scale = 1
		case c >= '0' && c <= '9':
			n, scale = n*10+int64(c-'0'), scale*10
		default:
			return engine.Num{}, false
		}
	}
	if neg {
		n = -n
	}
	return engine.Frac(n, max(scale, 1)), true
}
