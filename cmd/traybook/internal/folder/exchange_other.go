//go:build (!linux && !darwin) || twosteps

package folder

import "errors"

// OneStep says whether this system can swap two folders in one step. The tag
// twosteps builds for any system as for one that cannot.
const OneStep = false

func exchange(a, b string) error { return errors.ErrUnsupported }
