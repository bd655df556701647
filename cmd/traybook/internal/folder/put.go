package folder

import "iter"

// File is one file of a folder, its path with slashes. Written, where it is given, is called
// when the body is on the disk and read no more.
type File struct {
	Path    string
	Body    []byte
	Written func()
}

// List gives files that are all there, one after the other.
func List(files ...File) iter.Seq2[File, error] {
	return func(yield func(File, error) bool) {
		for _, f := range files {
			if !yield(f, nil) {
				return
			}
		}
	}
}

// Put makes a folder of the files and swaps it in. It writes each as it comes and keeps
// none; an error among them ends it. Before the swap it asks last, which may refuse. After
// an error and the end of the hold the place holds what it held.
func (h *Held) Put(files iter.Seq2[File, error], last func() error) error {
	if err := h.writeTree(h.fresh, files); err != nil {
		return err
	}
	return h.swapIn(last, h.swap)
}

// PutFile makes one file and moves it in, over a file that stands there; whether
// that may go is for the caller to know.
func (h *Held) PutFile(body []byte) error {
	if err := h.step(func() error { return h.disk.write(h.fresh, body) }); err != nil {
		return err
	}
	return h.swapIn(func() error { return nil }, h.moveOver)
}

// step does one step of the work, unless the hold has been ended.
func (h *Held) step(do func() error) error {
	h.gate.RLock()
	defer h.gate.RUnlock()
	return do()
}
