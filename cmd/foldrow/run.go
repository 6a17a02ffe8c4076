// Command foldrow is the program on the terminal: flags, lines in, pages out,
// the notebook's place, signals and exit statuses. What is said is package
// dialog's.
//
// Read run.go (what is started), chat.go (one turn, net.go under it), then start.go (which
// project), shelf.go and order.go (the notebook), line.go, keys.go, tap.go, input.go
// and console*.go (lines in), render.go, page.go, table.go and wrap.go (pages out).
package main

import (
	"fmt"
	"io"
	"os"
	"runtime/debug"
	"time"

	"foldrow/dialog"
	"foldrow/rules"
)

// Env is all that the program has of the world around it.
type Env struct {
	In       io.Reader
	Out, Err io.Writer
	Terminal bool       // a person sits at both ends
	Typed    bool       // the input is a terminal, wherever the output goes
	Screen   bool       // the output is a terminal
	Bare     bool       // one that obeys no escape sequences
	Width    func() int // columns of the window, 0 where there is none
	Height   func() int // its lines, the same way; only asked where Terminal is set
	Getenv   func(string) string
	GOOS     string
	Now      func() time.Time
	Signals  <-chan os.Signal
}

// run is the whole program; it gives the exit status.
func run(args []string, env Env) int {
	opt, err := parseFlags(args)
	switch {
	case err != nil:
		fmt.Fprintf(env.Err, "foldrow: %s\nfoldrow -h lists the flags\n", clean(err.Error()))
		return statusFlags
	case opt.help:
		return outputStatus(env.Err, usage(env.Out))
	case opt.version:
		_, err := fmt.Fprintln(env.Out, "foldrow", version())
		return outputStatus(env.Err, err)
	}
	c, err := newChat(opt, env)
	if err != nil {
		fmt.Fprintf(env.Err, "foldrow: %s\n", clean(err.Error()))
		return statusTrouble
	}
	defer c.shelf.close()
	switch {
	case opt.json:
		return c.talkJSON()
	case opt.example || opt.tour:
		return c.showExample()
	}
	if status, done := c.begin(); done {
		return status
	}
	return c.talkOn()
}

func newChat(opt options, env Env) (*chat, error) {
	book, err := rules.Load()
	if err != nil {
		return nil, err
	}
	c := &chat{env: env, opt: opt, talk: dialog.Soon(book), shelf: shelf{now: env.Now}}
	dumb := env.Bare || env.Getenv("TERM") == "dumb"
	plain := opt.json || opt.plain || dumb || !env.Screen || env.Getenv("NO_COLOR") != ""
	if c.page, err = newRenderer(plain, opt.plain); err != nil {
		return nil, err
	}
	if env.Terminal && !dumb && !opt.json && !opt.example && !opt.tour {
		c.in, err = newEditor(env.Width, c.completions)
		return c, err
	}
	p := newPipe(env.In)
	if env.Terminal && !opt.json && !opt.tour {
		p.prompt = func() { io.WriteString(env.Out, promptSign) }
	}
	c.in = p
	return c, nil
}

// version is the module's, as the build noted it.
func version() string {
	info, ok := debug.ReadBuildInfo()
	if !ok || info.Main.Version == "" || info.Main.Version == "(devel)" {
		return "unreleased"
	}
	return info.Main.Version
}
