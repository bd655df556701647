package estimate

// NPV returns the worth today of flows one season apart, the first of them one season away:
//
//	sum flow_k / (1+i)^k,  k = 1, 2, ...
//
// i is not below 0 (less is taken as 0). No flows are worth 0.
// Source: NPV of OpenFormula (OASIS, ODF 1.2 part 2).
func NPV(i float64, flows []float64) float64 {
	i = interest(i)
	worth := 0.0
	for k := len(flows) - 1; k >= 0; k-- {
		worth = (worth + flows[k]) / (1 + i)
	}
	return worth
}
