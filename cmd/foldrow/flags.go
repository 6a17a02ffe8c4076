package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"strconv"
	"strings"

	"foldrow/dialog/notebook"
)

// The width that -width takes, in columns.
const (
	leastWidth = 40
	mostWidth  = 200
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
		{"project", "NAME", "open the project of that name (50 letters at most), or begin it; lines from a pipe or a file are kept only with it"},
		{"state", "DIR", "keep the notebook in DIR; FOLDROW_STATE in the environment does the same"},
		{"forget", "", "keep nothing on disk"},
		{"plain", "", "bare text to be read aloud: no colour, no pictures, tables as lists"},
		{"width", "N", "lay text out in N columns, 40 to 200; otherwise the window's, 80 at most"},
		{"json", "", "read a line and write a JSON object for each turn"},
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
	width := ""
	set := flag.NewFlagSet("foldrow", flag.ContinueOnError)
	set.SetOutput(io.Discard)
	set.Usage = func() {}
	bools := map[string]*bool{
		"json": &o.json, "plain": &o.plain, "forget": &o.forget, "example": &o.example, "tour": &o.tour,
		"version": &o.version, "h": &o.help,
	}
	texts := map[string]*string{"project": &o.project, "state": &o.state, "width": &width}
	for _, f := range flagTable() {
		if to := bools[f.name]; to != nil {
			set.BoolVar(to, f.name, false, f.does)
		} else {
			set.StringVar(texts[f.name], f.name, "", f.does)
		}
	}
	err := set.Parse(args)
	switch {
	case errors.Is(err, flag.ErrHelp):
		o.help = true // -help and --help
		return o, nil
	case err != nil:
		return o, inPlainWords(err)
	case set.NArg() > 0:
		return o, fmt.Errorf("%q is not a flag; answers are typed or piped in", set.Arg(0))
	}
	given := map[string]bool{}
	set.Visit(func(f *flag.Flag) { given[f.Name] = true })
	err = o.checked(given, width)
	return o, err
}

// inPlainWords is what the library says about flags, for people.
func inPlainWords(err error) error {
	said := err.Error()
	if name, ok := strings.CutPrefix(said, "flag provided but not defined: "); ok {
		return fmt.Errorf("there is no flag %s", name)
	}
	if name, ok := strings.CutPrefix(said, "flag needs an argument: "); ok {
		return fmt.Errorf("%s wants something after it", name)
	}
	if _, rest, ok := strings.Cut(said, " for -"); ok && strings.HasPrefix(said, "invalid boolean") {
		name, _, _ := strings.Cut(rest, ":")
		return fmt.Errorf("-%s takes nothing after it", name)
	}
	return fmt.Errorf("one of the flags is not written as it should be: %s", said)
}

// checked holds what was given against what can be, and reads the width.
func (o *options) checked(given map[string]bool, width string) error {
	switch {
	case o.forget && given["project"]:
		return errors.New("-forget keeps nothing and -project keeps a project; give one of them")
	case o.json && (o.example || o.tour):
		return errors.New("-example and -tour have no JSON form; give one of them")
	case o.example && o.tour:
		return errors.New("-tour and -example show the same, step by step and at once; give one of them")
	case given["state"] && o.state == "":
		return errors.New("-state wants the name of a folder")
	}
	if given["project"] {
		if _, err := notebook.CleanName(o.project); err != nil {
			return unfit(err)
		}
	}
	if !given["width"] {
		return nil
	}
	n, err := strconv.Atoi(width)
	if err != nil || n < leastWidth || n > mostWidth {
		return fmt.Errorf("-width wants a whole number of columns from %d to %d, not %q", leastWidth, mostWidth, width)
	}
	o.width = n
	return nil
}

// unfit says why no project can have that name.
func unfit(err error) error {
	n, ok := errors.AsType[*notebook.NameError](err)
	if !ok || n.Reason == "is empty" {
		return errors.New("-project wants a name with a letter or a digit in it")
	}
	return fmt.Errorf("the name after -project %s", n.Reason)
}
