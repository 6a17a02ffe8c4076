package answer

import (
	"fmt"
	"math"

	"foldrow/engine"
)

// pickWords is a ratio along a slope as it is counted: "4 for every 5 rows".
func pickWords(f float64) string {
	of, every := engine.BestFraction(engine.Frac(int64(f*1e6+0.5), 1e6), 10)
	return fmt.Sprintf("%d for every %s", of, Count(every, "row", "rows"))
}

// whomWords is a wearer as people say it: "a girl of 3", "a baby of 6
// months", "a woman, US size 12".
func whomWords(w engine.Whom) string {
	if w.Adult {
		who := map[string]string{"female": "a woman", "male": "a man", "": "an adult"}[w.Sex]
		switch {
		case w.Size == "":
			return who
		case w.Size[0] >= '0' && w.Size[0] <= '9':
			return who + ", US size " + w.Size
		}
		return who + ", size " + w.Size
	}
	who := map[string]string{"female": "a girl", "male": "a boy", "": "a child"}[w.Sex]
	switch {
	case w.Months == 0:
		return "a newborn"
	case w.Months >= 24 && w.Months%12 == 0:
		return fmt.Sprintf("%s of %d", who, w.Months/12)
	case w.Months >= 24 && w.Months%12 == 6:
		return fmt.Sprintf("%s of %d 1/2", who, w.Months/12)
	case w.Sex == "" && w.Months < 24:
		who = "a baby"
	}
	return who + " of " + Count(w.Months, "month", "months")
}

// tableOf is the table that a wearer's figure comes from, "" for any other.
func (v Voice) tableOf(in engine.Inputs, by, k engine.Key) string {
	w, ok := engine.ParseWhom(in.Text(engine.KeyWearer))
	if !ok || by != engine.KeyWearer {
		return ""
	}
	b := v.Book.Tables.Body(w)
	switch k {
	case engine.Head:
		return v.Sources([]string{b.HeadSource})
	case engine.NeckMid:
		return v.Sources([]string{b.NeckSource})
	}
	return ""
}

// Slit is a length that must not be too short, as one would cut it: rounded
// once, up, to half a centimetre or an eighth of an inch.
func (v Voice) Slit(cm float64) string {
	if v.Unit == "in" {
		return eighths(math.Ceil(cm/2.54*8-1e-9)/8) + " in"
	}
	return trim(math.Ceil(cm*2-1e-9)/2, 1) + " cm"
}
