package dialog

// Reply is what one turn gives back: the facts for scripts and the Markdown
// for the knitter, both made from the same plan. The field names are those of
// the JSON Lines contract.
type Reply struct {
	Turn     int            `json:"turn"`
	Said     string         `json:"said"`
	Kind     string         `json:"kind"`
	Changes  map[string]any `json:"changes"`
	Asks     *string        `json:"asks"`
	Answer   map[string]any `json:"answer,omitempty"`
	Inputs   map[string]any `json:"inputs"`
	Results  map[string]any `json:"results"`
	Cautions []string       `json:"cautions"`
	Markdown string         `json:"markdown"`

	// Leave is set when the knitter said that she is leaving.
	Leave bool `json:"-"`
}
