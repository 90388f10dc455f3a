package check

var feeding = []*Rule{}
