package check

var security = []*Rule{}
