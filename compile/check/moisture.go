package check

var moisture = []*Rule{}
