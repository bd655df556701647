package chart

import "traybook/report/chart/runtime"

// Bundle returns the chart engine that traybook was built with; nil: none.
func Bundle() []byte {
	b, ok := runtime.Bundle()
	if !ok {
		return nil
	}
	return b
}
