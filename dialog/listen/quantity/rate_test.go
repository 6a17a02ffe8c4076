package quantity

import "testing"

var gaugeForms = []reading{
	{"28 sts and 40 rows to 10 cm", "28 st per 10 cm [28 sts]; 40 row per 10 cm [40 rows to 10 cm]"},
	{"28 stitches x 40 rows = 10cm", "28 st per 10 cm pair [28 stitches]; 40 row per 10 cm pair [40 rows = 10cm]"},
	{"28 st 40 r per 10", "28 st per 10 cm [28 st]; 40 row per 10 cm [40 r per 10]"},
	{"28 sts, 40 rows, 10 cm", "28 st per 10 cm [28 sts]; 40 row per 10 cm [40 rows, 10 cm]"},
	{"28 sts 40 rows", "28 st [28 sts]; 40 row [40 rows]"},
	{"28/40", "28 pair [28]; 40 pair [40]"},
	{"28x40", "28 pair [28]; 40 pair [40]"},
	{"28 x 40", "28 pair [28]; 40 pair [40]"},
	{"28 by 40", "28 pair [28]; 40 pair [40]"},
	{"29.5 x 41", "59/2 pair [29.5]; 41 pair [41]"},
	{"28.5/40", "57/2 pair [28.5]; 40 pair [40]"},
	{"12/16", "12 pair [12]; 16 pair [16]"},
	{"40 28/36", "40 [40]; 28 pair [28]; 36 pair [36]"},
	{"28/40 per 10 cm", "28 per 10 cm pair [28]; 40 per 10 cm pair [40 per 10 cm]"},
	{"7 x 10 per inch", "7 per 1 in pair [7]; 10 per 1 in pair [10 per inch]"},
	{"6/8 to the inch", "6 per 1 in pair [6]; 8 per 1 in pair [8 to the inch]"},
	{"7 sts to the inch", "7 st per 1 in [7 sts to the inch]"},
	{"7 per inch", "7 per 1 in [7 per inch]"},
	{"7 stitches an inch", "7 st per 1 in [7 stitches an inch]"},
	{"7.25 spi, 10 rpi", "29/4 st per 1 in [7.25 spi]; 10 row per 1 in [10 rpi]"},
	{`7 sts to 1"`, `7 st per 1 in [7 sts to 1"]`},
	{"3.1 sts/cm", "31/10 st per 1 cm [3.1 sts/cm]"},
	{"28 over 4 inches", "28 per 4 in [28 over 4 inches]"},
	{"28 to 4in", "28 per 4 in [28 to 4in]"},
	{"28 sts in 10 cm", "28 st per 10 cm [28 sts in 10 cm]"},
	{"28 in 10 cm", "28 per 10 cm [28 in 10 cm]"},
	{"28/10cm", "28 per 10 cm [28/10cm]"},
	{`28 sts/4", 40 rows/4"`, `28 st per 4 in [28 sts/4"]; 40 row per 4 in [40 rows/4"]`},
	{"28 sts per 10 cm/4 in, 2x2", "28 st per 10 cm [28 sts per 10 cm/4 in]; 2..2 rib [2x2]"},
	{"28 sts = 10 cm (4 in)", "28 st per 10 cm [28 sts = 10 cm (4 in)]"},
	{"28 sts and 40 rows over 10 x 10 cm", "28 st per 10 cm [28 sts]; 40 row per 10 cm [40 rows over 10 x 10 cm]"},
	{"28 sts to 10 cm, 40 rows", "28 st per 10 cm [28 sts to 10 cm]; 40 row per 10 cm [40 rows]"},
	{"28 sts to 10 cm, 11 rows deep", "28 st per 10 cm [28 sts to 10 cm]; 11 row [11 rows]"},
	{"97 stitches, 40 rows to 10 cm", "97 st [97 stitches]; 40 row per 10 cm [40 rows to 10 cm]"},
	{"28 or 29 sts to 10 cm", "28 st per 10 cm [28]; 29 st per 10 cm or [29 sts to 10 cm]"},
	{"stitches 28, rows 40 to 10 cm", "28 st per 10 cm after [28]; 40 row per 10 cm after [40 to 10 cm]"},
	{"seven and a half stitches to the inch", "15/2 st per 1 in words [seven and a half stitches to the inch]"},
	{"40 stitches measure 14.2 cm and 60 rows 15 cm",
		"40 st per 71/5 cm [40 stitches measure 14.2 cm]; 60 row per 15 cm [60 rows 15 cm]"},
	{"40 sts = 14.2cm", "40 st per 71/5 cm [40 sts = 14.2cm]"},
	{"40 stitches across 14.2 cm", "40 st per 71/5 cm [40 stitches across 14.2 cm]"},
	{"40 stitches of my swatch measure 14.2 cm", "40 st per 71/5 cm [40 stitches of my swatch measure 14.2 cm]"},
	{"40 sts by 60 rows measures 14.2 cm by 15 cm",
		"40 st per 71/5 cm pair [40 sts]; 60 row per 15 cm pair [60 rows measures 14.2 cm by 15 cm]"},
	{"40 stitches is 15 cm wide and 60 rows is 15 cm tall",
		"40 st per 15 cm [40 stitches is 15 cm]; 60 row per 15 cm [60 rows is 15 cm]"},
}

var turnedForms = []reading{
	{"10 cm = 28 sts and 40 rows", "28 st per 10 cm [10 cm = 28 sts]; 40 row per 10 cm [40 rows]"},
	{"10 cm: 28 sts, 40 rows", "28 st per 10 cm [10 cm: 28 sts]; 40 row per 10 cm [40 rows]"},
	{"over 10 cm I get 28 stitches and 40 rows",
		"28 st per 10 cm [10 cm I get 28 stitches]; 40 row per 10 cm [40 rows]"},
	{"14.2 cm for 40 stitches", "40 st per 71/5 cm [14.2 cm for 40 stitches]"},
	{"120 cm for 50 stitches", "50 st per 120 cm [120 cm for 50 stitches]"},
	{"1.6 cm per stitch", "1 st per 8/5 cm [1.6 cm per stitch]"},
	{"1.7 m per 100 stitches", "100 st per 17/10 m [1.7 m per 100 stitches]"},
	{"depth 3 cm for 97 stitches", "3 cm [3 cm]; 97 st [97 stitches]"},
	{"the neck is 40 cm: 28 sts and 40 rows", "40 cm [40 cm]; 28 st [28 sts]; 40 row [40 rows]"},
}

var yarnForms = []reading{
	{"400 m per 100 g", "400 m per 100 g [400 m per 100 g]"},
	{"400m/100g", "400 m per 100 g [400m/100g]"},
	{"200 yards per 50 g", "200 yd per 50 g [200 yards per 50 g]"},
	{"437 yds to the 100g", "437 yd per 100 g [437 yds to the 100g]"},
	{"100g = 400m", "400 m per 100 g [100g = 400m]"},
	{"210 m a ball of 50 g", "210 m per 50 g [210 m a ball of 50 g]"},
	{"230 yards in each 50 g ball", "230 yd per 50 g [230 yards in each 50 g]"},
	{"125 m (50 g)", "125 m per 50 g [125 m (50 g)]"},
	{"a 50 g ball is 125 m", "125 m per 50 g [50 g ball is 125 m]"},
	{"60 g of 400 m per 100 g", "60 g [60 g]; 400 m per 100 g [400 m per 100 g]"},
	{"420 m/100 g, 35 g left", "420 m per 100 g [420 m/100 g]; 35 g [35 g]"},
	{"400 m and 100 g", "400 m [400 m]; 100 g [100 g]"},
	{"4 m/g", "4 m per 1 g [4 m/g]"},
	{"560 yd/lb", "560 yd per 16 oz [560 yd/lb]"},
}

// lineForms are whole lines, several answers in one.
var lineForms = []reading{
	{"cardigan, 28 sts 40 rows 45 cm 2x2 4 cm", "28 st [28 sts]; 40 row [40 rows]; 45 cm [45 cm]; 2..2 rib [2x2]; 4 cm [4 cm]"},
	{"28 sts per 10 cm, neck 40 cm, 2x2, 3 cm", "28 st per 10 cm [28 sts per 10 cm]; 40 cm [40 cm]; 2..2 rib [2x2]; 3 cm [3 cm]"},
	{"97 stitches for a 40 cm neck", "97 st [97 stitches]; 40 cm [40 cm]"},
	{"97 stitches 4 in deep", "97 st [97 stitches]; 4 in [4 in]"},
	{"change the depth to 4 cm, 97 stitches", "4 cm [4 cm]; 97 st [97 stitches]"},
	{"row 5 10 cm", "5 row after [5]; 10 cm [10 cm]"},
	{"2 rows per click", "2 row [2 rows]"},
	{"1 click every 2 rows", "1 click [1 click]; 2 row [2 rows]"},
	{"decrease 12 stitches over 97 needles", "12 st [12 stitches]; 97 needle [97 needles]"},
	{"40 cm plus 2 cm ease", "40 cm [40 cm]; 2 cm plus [plus 2 cm]"},
}

func TestGauges(t *testing.T) { readAll(t, gaugeForms) }
func TestTurned(t *testing.T) { readAll(t, turnedForms) }
func TestYarn(t *testing.T)   { readAll(t, yarnForms) }
func TestLines(t *testing.T)  { readAll(t, lineForms) }
