package records

// severityOf returns the severity of a named check.
func severityOf(name string) Severity {
	return Error
}
