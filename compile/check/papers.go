package check

var papers = []*Rule{}
