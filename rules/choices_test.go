package rules

import (
	"testing"

	"foldrow/engine"
)

// A part's default holds only once something of the part was said.
func TestPartDefaults(t *testing.T) {
	b := book(t)
	if in := b.Filled(engine.Inputs{}); in.Has(engine.KeyYokeMethod) {
		t.Error("a plan without a yoke has a way of its cuts")
	}
	said, _ := (engine.Inputs{}).WithText(engine.KeyYokeMethod, "straight_cone")
	if !b.Uses(said, "yoke") || b.Filled(said).Text(engine.KeyYokeMethod) != "straight_cone" {
		t.Error("what was said is not kept")
	}
}

func TestChoiceCards(t *testing.T) {
	k, _ := book(t).Key(engine.KeyYokeMethod)
	if k.DefaultText != "equal_cuts" || k.ChoiceLabel("sequence_a") != "a third off three times" || k.ChoiceLabel("other") != "other" {
		t.Errorf("%+v", k)
	}
	bad := &faults{}
	c := Card{ID: "yoke_method", Fields: map[string]string{"is-equal_cuts": "Equal", "is-none": "none"}}
	checkChoices(c, KeyCard{Key: engine.KeyYokeMethod, Choices: readChoices(c, engine.KeyYokeMethod), DefaultText: "odd"}, bad)
	got := map[string]bool{}
	for _, e := range bad.list {
		got[e.Detail] = true
	}
	for _, want := range []string{"Equal", "is-none", "is-sequence_a", "default odd is no value of it"} {
		if !got[want] {
			t.Errorf("%q is not found at fault; %v", want, bad.list)
		}
	}
}
