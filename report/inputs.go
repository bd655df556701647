package report

func (r *Report) inputs() {}
