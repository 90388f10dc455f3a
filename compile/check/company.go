package check

var company = []*Rule{}
