package notebook

import (
	"errors"
	"os"
	"path/filepath"
)

// Report says how the opening went.
type Report struct {
	Entries  int    // entries read
	Cut      int    // bytes of a half-written last line that were cut
	SideCopy string // file that now holds everything from the damage on
	Newer    bool   // a later format from some line on: untouched, read-only
	ReadOnly error  // why nothing can be added, nil if it can
}

// Open opens or creates the project and takes its lock: ErrBusy if another
// window has it, a *NameError for a name that will not do, a *WriteError where
// there is nothing to read and nothing can be written, a *ReadError where what is
// there cannot be read. A file that can be read but not written is opened for
// reading only; the Report says so.
func Open(folder, project string) (*Book, Report, error) {
	asked, err := CleanName(project)
	if err != nil {
		return nil, Report{}, err
	}
	if err := makeFolder(folder); err != nil {
		return nil, Report{}, err
	}
	held, err := lock(lockPath(folder, asked))
	if errors.Is(err, ErrBusy) {
		return nil, Report{}, err
	}
	// Looked for only now, because nobody can begin it in other letters any more.
	name, exists := find(folder, asked)
	b := &Book{name: name, folder: folder, lock: held}
	if err == nil {
		b.file, err = openFile(b.path(ending), os.O_RDWR|os.O_APPEND|os.O_CREATE)
	}
	if err != nil {
		if held != nil {
			dropLock(held)
		}
		err = &WriteError{b.path(ending), err}
		if !exists || errors.Is(err, ErrLink) {
			return nil, Report{}, err
		}
		return readOnly(folder, name, err)
	}
	if !exists {
		syncFolder(folder)
	}
	rep, err := b.load()
	if err != nil {
		// Not Close: what could not be read is not for us to tidy up.
		_ = b.file.Close()
		dropLock(held)
		return nil, rep, err
	}
	return b, rep, nil
}

// Read opens the project for reading only and without its lock, as a second
// window may. Nothing is repaired.
func Read(folder, project string) (*Book, Report, error) {
	name, _, err := resolve(folder, project)
	if err != nil {
		return nil, Report{}, err
	}
	return readOnly(folder, name, ErrReadOnly)
}

func readOnly(folder, name string, why error) (*Book, Report, error) {
	b := &Book{name: name, folder: folder, readOnly: why}
	var err error
	if b.file, err = openFile(b.path(ending), os.O_RDONLY); err != nil {
		return nil, Report{}, err
	}
	rep, err := b.load()
	// On Windows a file that anyone has open can be neither renamed nor removed.
	_ = b.file.Close()
	b.file = nil
	if err != nil {
		return nil, rep, err
	}
	return b, rep, nil
}

func openFile(path string, flag int) (*os.File, error) {
	if _, err := plain(path); err != nil {
		return nil, err
	}
	return os.OpenFile(path, flag|noFollow, 0o600)
}

func (b *Book) path(end string) string { return filepath.Join(b.folder, b.name+end) }

// load reads the file and, unless the book is read-only, puts right what can
// be put right. After an error, a *ReadError, the book knows nothing of the file
// and must not be closed, only its file.
func (b *Book) load() (Report, error) {
	data, err := readAll(b.file)
	if err != nil {
		return Report{}, err
	}
	r := read(data)
	b.entries, b.size, b.open = r.entries, int64(r.good), r.open
	b.settled = !r.open && r.bad == nil
	rep := Report{Entries: len(r.entries), Newer: r.newer}
	if r.newer && b.readOnly == nil {
		b.readOnly = ErrReadOnly
	}
	if b.readOnly == nil {
		rep.Cut, rep.SideCopy = b.mend(r)
	}
	rep.ReadOnly = b.readOnly
	return rep, nil
}

// mend keeps a copy of what is damaged, then cuts the file back to its
// entries. If no copy can be made nothing is cut and the book is read-only.
func (b *Book) mend(r reading) (cut int, copied string) {
	_ = b.file.Chmod(0o600)
	if r.bad != nil && !r.torn {
		var err error
		if copied, err = sideCopy(b.path(""), r.bad); err != nil {
			b.readOnly = &WriteError{b.path(ending), err}
			return 0, ""
		}
	}
	if r.torn {
		cut = len(r.bad)
	}
	// If this fails now, Append tries again before it writes.
	_ = b.settle()
	return cut, copied
}
