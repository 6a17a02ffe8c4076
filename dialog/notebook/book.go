// Package notebook keeps what was said in a project on disk: a file of JSON
// Lines, one per accepted turn, only ever added to.
//
// Goals: a turn that Append has accepted is never lost, whatever happens to
// the program; damage to the file costs nothing before the damage and is never
// hidden; nobody else can read it. Not a goal: knowing what the state means.
//
// A project is one file in the notebooks' folder, 0600 in 0700, with a lock
// file beside it while it is or was open, and side copies of what was damaged.
// A Book is for one goroutine.
package notebook

import (
	"bytes"
	"encoding/json"
	"errors"
	"io/fs"
	"os"
	"time"

	"github.com/gofrs/flock"
)

// ErrReadOnly says that the book was opened for reading only.
var ErrReadOnly = errors.New("the notebook is open for reading only")

// WriteError says that the disk did not take something: full, read-only, gone,
// not ours. Err is the reason.
type WriteError struct {
	Path string
	Err  error
}

func (e *WriteError) Error() string { return "the notebook cannot be written: " + reason(e.Err) }

// Unwrap is the reason.
func (e *WriteError) Unwrap() error { return e.Err }

// reason leaves out operation and path, which the sentence around it has.
func reason(err error) string {
	if p, ok := errors.AsType[*fs.PathError](err); ok {
		err = p.Err
	}
	if l, ok := errors.AsType[*os.LinkError](err); ok {
		err = l.Err
	}
	return err.Error()
}

// ReadError says that what stands on the disk could not be read: a fault of the
// disk, or a file too large for a notebook. Err is the reason. The file is as it was.
type ReadError struct {
	Path string
	Err  error
}

func (e *ReadError) Error() string { return "the notebook cannot be read: " + reason(e.Err) }

// Unwrap is the reason.
func (e *ReadError) Unwrap() error { return e.Err }

// Book is an open project. Only load makes one whole.
type Book struct {
	name, folder string
	file         *os.File     // nil when reading only, once it was read
	lock         *flock.Flock // nil when reading only
	readOnly     error
	entries      []Entry
	size         int64 // bytes of the file that hold the entries
	open         bool  // the last of them lacks its newline
	settled      bool  // the file is exactly those bytes
	buf          bytes.Buffer
}

// settle makes the file exactly the entries' bytes, each with its newline.
func (b *Book) settle() error {
	if b.settled {
		return nil
	}
	if err := b.cut(); err != nil {
		return err
	}
	if b.open {
		if _, err := b.file.Write([]byte("\n")); err != nil {
			return err
		}
		b.size, b.open = b.size+1, false
	}
	b.settled = true
	return nil
}

// cut leaves nothing after the entries' bytes. It opens the file anew, because
// Windows lets one that is open for appending only grow.
func (b *Book) cut() error {
	f, err := openFile(b.path(ending), os.O_WRONLY)
	if err != nil {
		return err
	}
	ours, err1 := b.file.Stat()
	there, err2 := f.Stat()
	switch {
	case err1 != nil || err2 != nil:
		err = errors.Join(err1, err2)
	case !os.SameFile(ours, there):
		err = fs.ErrNotExist // replaced under us: see inPlace
	default:
		err = f.Truncate(b.size)
	}
	return errors.Join(err, f.Close())
}

// Append writes the turn and returns when the disk has it. Any failure is a
// *WriteError and leaves the book as it was, so a later call may succeed: a
// line that was half written is cut before the next one. ErrReadOnly if the
// book is for reading only. The state must be valid JSON.
func (b *Book) Append(said string, state json.RawMessage, at time.Time) error {
	if b.readOnly != nil {
		return b.readOnly
	}
	e := Entry{Seq: len(b.entries) + 1, At: at, Said: said, State: state}
	b.buf.Reset()
	kept, err := encode(&b.buf, e)
	if err != nil {
		return err
	}
	e.State = bytes.Clone(kept)
	if err := b.write(b.buf.Bytes()); err != nil {
		b.settled = false
		return &WriteError{b.path(ending), err}
	}
	b.size += int64(b.buf.Len())
	b.entries = append(b.entries, e)
	return nil
}

func (b *Book) write(line []byte) error {
	if err := b.settle(); err != nil {
		return err
	}
	if err := b.inPlace(); err != nil {
		return err
	}
	if _, err := b.file.Write(line); err != nil {
		_ = b.cut()
		return err
	}
	if err := b.file.Sync(); err != nil && !errors.Is(err, errors.ErrUnsupported) {
		_ = b.cut()
		return err
	}
	return nil
}

// inPlace notices that the file was removed or replaced under us: what is
// written to it then would be kept nowhere.
func (b *Book) inPlace() error {
	ours, err := b.file.Stat()
	if err != nil {
		return err
	}
	there, err := os.Lstat(b.path(ending))
	if err == nil && !os.SameFile(ours, there) {
		err = fs.ErrNotExist
	}
	return err
}

// Name is the project's name as it stands in the folder.
func (b *Book) Name() string { return b.name }

// Entries are all turns in order. They must not be changed.
func (b *Book) Entries() []Entry { return b.entries }

// Last is the latest turn; false in an empty book.
func (b *Book) Last() (Entry, bool) {
	if len(b.entries) == 0 {
		return Entry{}, false
	}
	return b.entries[len(b.entries)-1], true
}

// Close lets the file and the lock go. Everything was already on disk; a
// project in which nothing was said leaves no file behind.
func (b *Book) Close() error {
	if b.file == nil {
		return nil
	}
	unused := b.unused() // asked while the file is open: its place on the disk is not given to another
	err := b.file.Close()
	if b.lock != nil {
		if unused {
			err = errors.Join(err, os.Remove(b.path(ending)))
		}
		dropLock(b.lock)
	}
	return err
}

// unused reports that the file holds nothing, and that it is ours that stands in
// the folder: somebody may have put a copy from elsewhere in its place.
func (b *Book) unused() bool {
	if len(b.entries) > 0 || b.readOnly != nil || b.inPlace() != nil {
		return false
	}
	info, err := b.file.Stat()
	return err == nil && info.Size() == 0
}
