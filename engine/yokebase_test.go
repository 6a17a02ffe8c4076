package engine

import (
	"slices"
	"testing"
)

func TestJoinedPublished(t *testing.T) {
	for _, row := range published(t, "yoke-joins.csv") {
		got := Joined(whole(t, row["body"]), whole(t, row["sleeve"]), whole(t, row["underarm"]))
		if got != whole(t, row["joined"]) {
			t.Errorf("%s: %d joined, want %s", row["id"], got, row["joined"])
		}
	}
}

func TestPercentageSystem(t *testing.T) {
	tests := []struct {
		name      string
		got, want int
	}{
		{"W01 yoke base of 200", YokeBase(200), 268},
		{"W10 yoke base of 160", YokeBase(160), 214},
		{"W11 underarm of 160", PercentOf(160, Int(UnderarmPercent)), 13},
		{"W05 neck of 200", PercentNeck(200, Int(NeckPercent), 1, 0), 80},
		{"W12 neck of 276 at 35 %, even", PercentNeck(276, Int(35), 2, 0), 96},
		{"W14 child's neck of 100", PercentNeck(100, Int(50), 1, 0), 50},
		{"neck of 200 in 4n+2", PercentNeck(200, Int(NeckPercent), 4, 2), 82},
	}
	for _, tt := range tests {
		if tt.got != tt.want {
			t.Errorf("%s: %d, want %d", tt.name, tt.got, tt.want)
		}
	}
	if rounds, left := Rounds(356, 96, 8); rounds != 32 || left != 4 {
		t.Errorf("W13: %d rounds and %d left, want 32 and 4", rounds, left)
	}
	for w, want := range map[Wearer][2]int{Adult: {40, 45}, Child: {50, 50}, Infant: {50, 60}, Oversized: {35, 35}} {
		if low, high, ok := NeckPercents(w); !ok || low != want[0] || high != want[1] {
			t.Errorf("%s: %d-%d %v, want %v", w, low, high, ok, want)
		}
	}
	// W19: 9 in at 8 rows to the inch is 72 rows, six stages of 12.
	nine, eight := Frac(9*254, 100), Int(80).Div(Frac(254, 100))
	if got := StageRows(nine, eight, 6); !slices.Equal(got, []int{12, 12, 12, 12, 12, 12}) {
		t.Errorf("W19: %v", got)
	}
	if got := StageRows(nine, eight, 5); !slices.Equal(got, []int{14, 15, 14, 15, 14}) {
		t.Errorf("72 rows in five stages: %v", got)
	}
	if _, _, ok := NeckPercents("horse"); ok {
		t.Error("percentages for a wearer nobody published")
	}
}

func TestYokeDepth(t *testing.T) {
	for _, row := range published(t, "yoke-depth.csv") {
		d := YokeDepthFor(number(t, row["bust"]))
		depth := number(t, row["depth"])
		if depth.Less(d.Low) || d.High.Less(depth) || !depth.Equal(d.Low) && !depth.Equal(d.High) {
			t.Errorf("%s bust %s: %s to %s, want %s at one end", row["id"], row["bust"], d.Low, d.High, depth)
		}
		if d.Beyond || !d.Rule.Equal(number(t, row["bust"]).Div(Int(4))) {
			t.Errorf("%s bust %s: beyond %v, rule %s", row["id"], row["bust"], d.Beyond, d.Rule)
		}
	}
	tests := []struct {
		bust                  Num
		low, high, rule, over string
		beyond                bool
	}{
		{Int(100), "232/11", "43/2", "25", "7/2", false},
		{Frac(1016, 10), "1168/55", "219/10", "127/5", "7/2", false}, // W04, W09: 40 in around, rule 10 in
		{Int(110), "22", "23", "55/2", "9/2", false},
		{Int(151), "25", "30", "151/4", "31/4", false},
		{Int(60), "19", "19", "15", "0", true},
		{Int(170), "25", "30", "85/2", "25/2", true},
	}
	for _, tt := range tests {
		d := YokeDepthFor(tt.bust)
		got := []string{d.Low.String(), d.High.String(), d.Rule.String(), d.Over.String()}
		if want := []string{tt.low, tt.high, tt.rule, tt.over}; !slices.Equal(got, want) || d.Beyond != tt.beyond {
			t.Errorf("bust %s: %v %v, want %v %v", tt.bust, got, d.Beyond, want, tt.beyond)
		}
	}
}
