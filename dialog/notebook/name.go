package notebook

import (
	"fmt"
	"os"
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/unicode/norm"
)

// maxName is the longest project name in letters: four bytes each and an
// ending stay below the 255 bytes that file systems allow.
const maxName = 50

// NameError says why a project cannot have the name asked for.
type NameError struct {
	Name   string
	Reason string // "is empty", "is too long (50 letters at most)", "is kept by the system"
}

func (e *NameError) Error() string { return "the name " + e.Reason }

// CleanName is the name a project gets for what was asked: letters of any
// script, digits, single spaces and dashes. Apostrophes are dropped, anything
// else becomes a space, so no name can be a path. The same name typed on two
// keyboards is one name (Unicode NFC).
func CleanName(asked string) (string, error) {
	var b strings.Builder
	for _, r := range norm.NFC.String(asked) {
		switch {
		case unicode.IsLetter(r), unicode.IsMark(r), unicode.IsDigit(r), r == '-':
			b.WriteRune(r)
		case r == '\'', r == '’':
		default:
			b.WriteByte(' ')
		}
	}
	name := strings.Join(strings.Fields(b.String()), " ")
	// A leading dash would read as a flag.
	name = norm.NFC.String(strings.Trim(name, "- "))
	switch {
	case strings.IndexFunc(name, func(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }) < 0:
		return "", &NameError{asked, "is empty"}
	case utf8.RuneCountInString(name) > maxName:
		return "", &NameError{asked, fmt.Sprintf("is too long (%d letters at most)", maxName)}
	case reserved(name):
		return "", &NameError{asked, "is kept by the system"}
	}
	return name, nil
}

// reserved reports the names that Windows gives to devices. They are refused
// everywhere, so that a folder of notebooks can be carried over.
func reserved(name string) bool {
	up := strings.ToUpper(name)
	switch up {
	case "CON", "PRN", "AUX", "NUL", "CONIN", "CONOUT":
		return true
	}
	port := strings.HasPrefix(up, "COM") || strings.HasPrefix(up, "LPT")
	return port && len(up) == 4 && up[3] >= '0' && up[3] <= '9'
}

// resolve cleans asked and, if a project of that name exists, gives the name
// as it was first written: names that differ only in case are one project,
// because they are one file on many disks.
func resolve(folder, asked string) (name string, exists bool, err error) {
	if name, err = CleanName(asked); err != nil {
		return "", false, err
	}
	name, exists = find(folder, name)
	return name, exists, nil
}

// find is resolve for a clean name. Where two files differ only in case all the
// same, put there by other programs, the one written as asked is meant.
func find(folder, clean string) (name string, exists bool) {
	files, _ := os.ReadDir(folder)
	name = clean
	for _, f := range files {
		switch have, ok := projectOf(f.Name()); {
		case !ok:
		case have == clean:
			return have, true
		case !exists && strings.EqualFold(have, clean):
			name, exists = have, true
		}
	}
	return name, exists
}

// Find is the name of the project that is meant by what was asked. ErrNone or a
// *NameError.
func Find(folder, asked string) (string, error) {
	name, exists, err := resolve(folder, asked)
	if err == nil && !exists {
		err = ErrNone
	}
	return name, err
}

const ending = ".jsonl"

// projectOf is the project kept in the file of that name. A dot cannot stand
// in a project's name, so side copies and locks are none.
func projectOf(file string) (string, bool) {
	name, ok := strings.CutSuffix(file, ending)
	name = norm.NFC.String(name) // some disks hand names back decomposed
	clean, err := CleanName(name)
	return name, ok && err == nil && clean == name
}
