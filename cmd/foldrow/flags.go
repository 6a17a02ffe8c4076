package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"strings"
)

// options is what the command line says.
type options struct {
	json, plain, forget, example, tour, version, help bool
	width                                             int
	project, state                                    string
}

// flagLine is one row of the help: a flag, what its value is called ("" for
// none) and what it does.
type flagLine struct{ name, value, does string }

// flagTable is the only list of the flags' words; the help prints it.
func flagTable() []flagLine {
	return []flagLine{
		{"project", "NAME", "open the project of that name, or begin it"},
		{"state", "DIR", "keep the notebook in DIR; FOLDROW_STATE in the environment does the same"},
		{"forget", "", "keep nothing on disk"},
		{"plain", "", "bare text to be read aloud: no colour, no pictures, tables as lists"},
		{"width", "N", "lay text out in N columns, 40 to 200; otherwise the window's, 80 at most"},
		{"json", "", "read a line and write a JSON object for each turn; kept only with -project"},
		{"tour", "", "step through a worked example: Enter goes on, q leaves"},
		{"example", "", "show the whole of it with nothing to press"},
		{"version", "", "print the version"},
		{"h", "", "print this help"},
	}
}

const usageHead = `foldrow plans and guides the neckband of a machine-knitted yoke, offline.

Run it and answer the questions, or pipe answers in, one a line:

  foldrow
  printf 'cardigan\n28 stitches and 40 rows\n42 cm\n1x1\n3 cm\n' | foldrow

`

const usageTail = `
Exit status: 0 finished, also at the end of input; 1 something stopped the
program; 2 wrong flags; 128 and the signal's number where a signal ended it.
`

// usage prints the help, all on one screen.
func usage(w io.Writer) error {
	var b strings.Builder
	b.WriteString(usageHead)
	for _, f := range flagTable() {
		for i, line := range wrap(f.does, 60) {
			left := ""
			if i == 0 {
				left = "-" + f.name + " " + f.value
			}
			fmt.Fprintf(&b, "  %-14s %s\n", left, line)
		}
	}
	b.WriteString(usageTail)
	_, err := io.WriteString(w, b.String())
	return err
}

// parseFlags reads the arguments. The error is one sentence.
func parseFlags(args []string) (options, error) {
	var o options
	set := flag.NewFlagSet("foldrow", flag.ContinueOnError)
	set.SetOutput(io.Discard)
	set.Usage = func() {}
	bools := map[string]*bool{
		"json": &o.json, "plain": &o.plain, "forget": &o.forget, "example": &o.example, "tour": &o.tour,
		"version": &o.version, "h": &o.help,
	}
	texts := map[string]*string{"project": &o.project, "state": &o.state}
	for _, f := range flagTable() {
		switch {
		case bools[f.name] != nil:
			set.BoolVar(bools[f.name], f.name, false, f.does)
		case texts[f.name] != nil:
			set.StringVar(texts[f.name], f.name, "", f.does)
		default:
			set.IntVar(&o.width, f.name, 0, f.does)
		}
	}
	err := set.Parse(args)
	switch {
	case errors.Is(err, flag.ErrHelp):
		o.help = true // -help and --help
	case err != nil:
		return o, err
	case set.NArg() > 0:
		return o, fmt.Errorf("%q is not a flag; answers are typed or piped in", set.Arg(0))
	case o.forget && o.project != "":
		return o, errors.New("-forget keeps nothing and -project keeps a project; give one of them")
	case o.json && (o.example || o.tour):
		return o, errors.New("-example and -tour have no JSON form; give one of them")
	}
	if o.width != 0 {
		o.width = min(max(o.width, 40), 200)
	}
	return o, nil
}
