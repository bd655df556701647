package report

func (r *Report) missing() {}
