package check

var heat = []*Rule{}
