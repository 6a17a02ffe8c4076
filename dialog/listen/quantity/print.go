package quantity

import (
	"strconv"
	"strings"

	"foldrow/engine"
)

// PrintCm is a length of v cm, to the nearest millimetre: "39.8 cm".
func PrintCm(v engine.Num) string {
	return Print(engine.Frac(int64(v.Mul(engine.Int(10)).Round()), 10), Centimetre)
}

// PrintInches is a length of v cm in inches, as a tape shows it: exactly
// where it is a whole number of sixteenths, else to the nearest eighth:
// "15 5/8 in".
func PrintInches(v engine.Num) string {
	in := v.Div(engine.Frac(254, 100))
	if !in.Mul(engine.Int(16)).IsInt() {
		in = engine.Frac(int64(in.Mul(engine.Int(8)).Round()), 8)
	}
	return printed(mixedForm(in, Inch), in, Inch)
}

// Print is v with its unit, exactly: Scan reads the same value back, as long
// as no part of it has more than 12 digits. Inches, feet and yards are
// written as mixed fractions, everything else as a decimal where it has one.
func Print(v engine.Num, u Unit) string {
	if u == Inch || u == Foot || u == Yard {
		return printed(mixedForm(v, u), v, u)
	}
	if s, ok := decimalForm(v); ok {
		return printed(s, v, u)
	}
	return printed(mixedForm(v, u), v, u)
}

func printed(number string, v engine.Num, u Unit) string {
	one := !engine.Int(1).Less(v.Abs()) && v.Sign() != 0
	switch u {
	case None:
		return number
	case Percent:
		return number + "%"
	case Stitch:
		if one {
			return number + " stitch"
		}
		return number + " stitches"
	case Row, Needle, Click, Number:
		if one {
			return number + " " + string(u)
		}
		return number + " " + string(u) + "s"
	}
	return number + " " + string(u)
}

// decimalForm is v in digits, if it ends within the digits that are read.
func decimalForm(v engine.Num) (string, bool) {
	scale := engine.Int(1)
	for places := 0; places < maxDigits; places++ {
		if w := v.Mul(scale); w.IsInt() {
			digits := w.Abs().String()
			if len(digits) > maxDigits {
				return "", false
			}
			for len(digits) <= places {
				digits = "0" + digits
			}
			s := digits[:len(digits)-places]
			if places > 0 {
				s += "." + digits[len(digits)-places:]
			}
			return sign(v) + s, len(digits) <= maxDigits
		}
		scale = scale.Mul(engine.Int(10))
	}
	return "", false
}

// mixedForm is v as a whole number and a fraction: "15 5/8". Where the
// fraction could be taken for a pair (13/27, stitches and rows) or the count
// of a yarn (2/30), "and" says that it is none: "31 and 13/27".
func mixedForm(v engine.Num, u Unit) string {
	abs := v.Abs()
	whole := abs.Floor()
	part := abs.Sub(engine.Int(int64(whole)))
	if part.Sign() == 0 {
		return sign(v) + strconv.Itoa(whole)
	}
	a, b, _ := strings.Cut(part.String(), "/")
	an, _ := strconv.ParseInt(a, 10, 64)
	bn, _ := strconv.ParseInt(b, 10, 64)
	measured := isLength(u) || isWeight(u)
	switch {
	case whole == 0 && classify(an, bn, false, measured) == fraction && !(u == None && yarnCount(an, bn)):
		return sign(v) + a + "/" + b
	case classify(an, bn, true, measured) == fraction:
		return sign(v) + strconv.Itoa(whole) + " " + a + "/" + b
	}
	return sign(v) + strconv.Itoa(whole) + " and " + a + "/" + b
}

func sign(v engine.Num) string {
	if v.Sign() < 0 {
		return "-"
	}
	return ""
}
