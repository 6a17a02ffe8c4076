package engine

import "testing"

func TestTexts(t *testing.T) {
	var in Inputs
	in, ok := in.WithText(KeyYokeMethod, " straight_cone ")
	if !ok || in.Text(KeyYokeMethod) != "straight_cone" || !in.Has(KeyYokeMethod) {
		t.Fatalf("%q %v", in.Text(KeyYokeMethod), ok)
	}
	if out, ok := in.WithText(KeyYokeMethod, "horseshoe"); ok || out != in {
		t.Error("a word that is no choice was taken")
	}
	if _, ok := in.WithText(Neck, "wide"); ok {
		t.Error("a number took a word")
	}
	back, ok := (Inputs{}).Parse(KeyYokeMethod, in.Value(KeyYokeMethod))
	if !ok || !back.Same(in, KeyYokeMethod) {
		t.Errorf("%q came back as %q", in.Value(KeyYokeMethod), back.Value(KeyYokeMethod))
	}
	without := in.Without(KeyYokeMethod)
	if in.Same(Inputs{}, KeyYokeMethod) || without.Has(KeyYokeMethod) {
		t.Error("not cleared")
	}
	if over := (Inputs{}).Over(in); over.Text(KeyYokeMethod) != "straight_cone" {
		t.Error("the default's text is not under it")
	}
	for _, k := range textKeys {
		for _, v := range TextChoices(k) {
			if s, ok := normalText(k, v); !ok || s != v {
				t.Errorf("%s: %q is kept as %q", k, v, s)
			}
		}
	}
}
