package folder

// Release ends the hold and clears what is not in its place. The error is what
// could not be cleared; the next hold tries again.
func (h *Held) Release() error {
	h.gate.Lock()
	defer h.gate.Unlock()
	return h.end()
}

// Abandon ends the hold while another goroutine may be at work on it: that one
// does nothing more, ever, so the process should exit. It returns false, and lets
// the work go on, where the new one stands at its place already.
func (h *Held) Abandon() bool {
	h.gate.Lock()
	if h.placed || h.ended {
		h.gate.Unlock()
		return false
	}
	_ = h.end()
	return true
}

// end does once, under the gate, what both ways of ending share.
func (h *Held) end() error {
	if h.ended {
		return nil
	}
	h.ended = true
	_, err := h.tidy(h.disk)
	h.letGo()
	return err
}

// letGo frees the lock. Its file goes first, while nobody else can hold it; a
// system that keeps open files lets it go after. Folders go only when empty.
func (h *Held) letGo() {
	if h.locked != nil {
		err := h.disk.remove(h.lock)
		h.locked.Close()
		if err != nil {
			_ = h.disk.remove(h.lock)
		}
	}
	_ = h.disk.remove(h.aside)
	if !h.placed {
		unmake(h.disk, h.made)
	}
}
