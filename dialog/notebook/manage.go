package notebook

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"time"

	"golang.org/x/text/unicode/norm"
)

// ErrExists says that a project of that name is there already, in any case of
// letters.
var ErrExists = errors.New("a project of that name exists already")

// ErrNone says that there is no such project.
var ErrNone = errors.New("there is no project of that name")

// ErrNewer says that the notebook was written by a later format.
var ErrNewer = errors.New("the notebook was written by a newer version")

// Project is one line of the list.
type Project struct {
	Name string
	Used time.Time // when the last turn was kept
}

// List gives the projects, the last used first. A folder that is not there yet
// holds none.
func List(folder string) ([]Project, error) {
	files, err := os.ReadDir(folder)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	var list []Project
	for _, f := range files {
		name, ok := projectOf(f.Name())
		info, ierr := f.Info()
		if ok && ierr == nil && info.Mode().IsRegular() {
			list = append(list, Project{name, info.ModTime()})
		}
	}
	slices.SortStableFunc(list, func(a, b Project) int { return b.Used.Compare(a.Used) })
	return list, err
}

// Rename gives a project that no window has open another name. Its side copies
// go with it. ErrNone, ErrExists, ErrBusy, *NameError or *WriteError.
func Rename(folder, from, to string) error {
	return withTwo(folder, from, to, true, func(old, new string) error {
		if err := os.Rename(old+ending, new+ending); err != nil {
			return &WriteError{new + ending, err}
		}
		for _, side := range sideCopies(old) {
			_ = os.Rename(side, freeSide(side, new))
		}
		return nil
	})
}

// Copy makes a second project from the turns of the first, which may be open.
// The copy is there whole or not at all. Errors as for Rename, and ErrNewer.
func Copy(folder, from, to string) error {
	return withTwo(folder, from, to, false, func(old, new string) error {
		data, err := readWhole(old + ending)
		if err != nil {
			return err
		}
		r := read(data)
		if r.newer {
			return ErrNewer
		}
		data = data[:r.good]
		if r.open {
			data = append(data, '\n')
		}
		part := new + ".part"
		_ = os.Remove(part) // left by a copy that was stopped; the name is held
		if err := writeNew(part, data); err != nil {
			return &WriteError{new + ending, err}
		}
		if err := os.Rename(part, new+ending); err != nil {
			return &WriteError{new + ending, err}
		}
		return nil
	})
}

func readWhole(path string) ([]byte, error) {
	f, err := openFile(path, os.O_RDONLY)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	return readAll(f)
}

// Delete removes a project that no window has open, with its side copies. The
// asking is the caller's. ErrNone, ErrBusy, *NameError or *WriteError.
func Delete(folder, project string) error {
	name, err := Find(folder, project)
	if err != nil {
		return err
	}
	base := filepath.Join(folder, name)
	l, err := lock(lockPath(folder, name))
	if err != nil {
		return lockError(base, err)
	}
	defer dropLock(l)
	if err := os.Remove(base + ending); err != nil {
		return &WriteError{base + ending, err}
	}
	for _, side := range sideCopies(base) {
		_ = os.Remove(side)
	}
	syncFolder(folder)
	return nil
}

// withTwo finds the first project and calls do with the paths of both, less
// their endings, while it holds the second's name and, if the first is to go
// away, the first. Only the case of the letters may change in place; one lock
// holds both names then.
func withTwo(folder, from, to string, goes bool, do func(old, new string) error) error {
	old, err := Find(folder, from)
	if err != nil {
		return err
	}
	name, err := CleanName(to)
	if err != nil {
		return err
	}
	oldBase, newBase := filepath.Join(folder, old), filepath.Join(folder, name)
	recase := goes && old != name && strings.EqualFold(old, name)
	if !recase {
		l, err := lock(lockPath(folder, name))
		if errors.Is(err, ErrBusy) {
			return ErrExists
		}
		if err != nil {
			return lockError(newBase, err)
		}
		defer dropLock(l)
		// Asked only now, because nobody can take the name any more.
		if _, taken := find(folder, name); taken {
			return ErrExists
		}
	}
	if goes {
		l, err := lock(lockPath(folder, old))
		if err != nil {
			return lockError(oldBase, err)
		}
		defer dropLock(l)
	}
	if recase && another(oldBase+ending, newBase+ending) {
		return ErrExists
	}
	if err := do(oldBase, newBase); err != nil {
		return err
	}
	syncFolder(folder)
	return nil
}

// another reports that a file of its own stands at there. On disks that do not tell
// case apart the same file answers to both names.
func another(here, there string) bool {
	second, err := os.Lstat(there)
	if err != nil {
		return false
	}
	first, err := os.Lstat(here)
	return err != nil || !os.SameFile(first, second)
}

func lockError(base string, err error) error {
	if errors.Is(err, ErrBusy) {
		return err
	}
	return &WriteError{base + ".lock", err}
}

func sideCopies(base string) []string {
	dir, name := filepath.Split(base)
	files, _ := os.ReadDir(filepath.Clean(dir))
	var paths []string
	for _, f := range files {
		// Some disks hand names back decomposed.
		if strings.HasPrefix(norm.NFC.String(f.Name()), name+sideMark) {
			paths = append(paths, filepath.Join(dir, f.Name()))
		}
	}
	return paths
}

// freeSide is where a side copy goes when its project is called new: under its own
// number, or the next where another project of that name has left one.
func freeSide(side, new string) string {
	path := new + side[strings.LastIndex(side, sideMark):]
	for n := 1; another(side, path); n++ {
		path = new + sideMark + strconv.Itoa(n) + ".txt"
	}
	return path
}
