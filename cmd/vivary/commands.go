package main

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"vivary/schema/slip"
)

// command is one of the program's commands.
type command struct {
	name  string
	also  string // other words for it, by which it is found and not called
	args  string // what follows the name, in words
	short string // what it does, in one line
	long  string
	try   string // a line that does something useful in the example's collection
	many  bool   // enclosures stand in it with commas
	run   func(*world, *flags, []string) int
	flags string // the names of the flags it takes, besides in and now
	finds bool   // what it prints is findings, which have a form of their own
}

// commands are in the order in which help lists them. They are put in place before main
// runs, since help, which is one of them, reads them.
var commands []command

func init() {
	commands = []command{
		{name: "start", also: "begin create init new", args: "[FOLDER]", short: "write a first collection to learn from", run: start, flags: "sheet type",
			try:  "vivary start spare-room",
			long: "Writes a small collection that compiles, with comments that teach, and .gitattributes and .gitignore for one that is kept in git; those that are there already stay as they are, and it says what to add to them. The folder must not hold a plan yet. With --sheet it writes a sheet of a species that is not built in, to be filled in, beside the plan that is there."},
		{name: "check", also: "lint test validate verify", args: "[FOLDER]", short: "look for mistakes", run: checkPlan, flags: "format out urgent-fails", finds: true,
			try:  "vivary check --urgent-fails",
			long: "Reads all plans and logs below the folder and prints what it finds. Exit status 1 if a finding would keep the plan from being built. What is urgent never does; with --urgent-fails the exit status is 3 while anything is."},
		{name: "build", also: "calendar calendars compile make", args: "[FOLDER]", short: "write the calendars", run: build, flags: "out format", finds: true,
			try:  "vivary build",
			long: "Checks, and writes one calendar file for each calendar of the plan. If anything refuses the plan, nothing is written and the last good calendars stay."},
		{name: "publish", also: "deploy push send sync upload", args: "[FOLDER] TARGET", short: "put the calendars where they are served from", run: publishTo, flags: "out format try remove private keys address gzip endpoint ssh-key known-hosts",
			try:  "vivary publish /srv/www/care",
			long: "Sends the calendars that vivary build has written to a folder, to sftp://USER@HOST/FOLDER or to s3://BUCKET/PREFIX, and of them only what changed there. It builds nothing. With --private each calendar is put under its private address, the same as with vivary serve, and with --address, how the place is reached, it says that address as its own. Readers see each calendar whole, as it was or as it is now. What was published once and is no calendar any more stays until --remove is said; what vivary did not put there is never touched. How it is served from there: examples/SERVING.md."},
		{name: "due", also: "agenda day list todo today", args: "[FOLDER]", short: "show what is due today and in the coming days", run: dueRounds, flags: "days format out round keeper paper",
			try:  "vivary due --days 3 --keeper lead",
			long: "Prints the rounds of today, without what the log says was done, and the coming days in a line each, or so many days in full. With --paper it writes today's rounds, or those of so many days, as sheets to be printed and ticked off. Calendars on phones lag by hours; this never does. While the plan is refused the list is that of the calendars last built, and the exit status is 1."},
		{name: "note", also: "add log record write", args: "[DAY] ENCLOSURE… [ANIMALS] WORD … [NOTE]", short: "append a line to the log", run: note, flags: "at by undo",
			many: true, try: `vivary note yesterday burrow-a refused "left the cricket, belly round"`,
			long: "Checks a line, appends it to records/YEAR.care.log and says what follows from it. Without a day it is today; yesterday, monday and 2 days ago are days too. Of several enclosures, tub-1,tub-2 or tub-7 to 12, it appends a line each. What was seen can be noted while the plan is refused too. With --undo it appends the line that takes back the last one, or the last one by the keeper named with --by, or the last about each enclosure that is named. After -- everything is taken as it stands, so that a note may begin with a hyphen."},
		{name: "cover", also: "handover sitter stand-in standin", args: "[FOLDER]", short: "make the sheet of somebody who stands in", run: coverSheet, flags: "keeper paper address keys out",
			try:  "vivary cover --paper relief.html",
			long: "Prints all that somebody needs who stands in for a keeper: their visits, whom to ring, what to do when something goes wrong, what is normal, and the list of each visit. It is for the next absence; with --keeper for the next one in which that keeper stands in. With --paper it is written as pages to be printed."},
		{name: "emergency", also: "alarm cards disaster evacuation powercut", args: "[FOLDER]", short: "make the cards for emergencies, to hang on a wall", run: emergencyCards, flags: "paper out",
			try:  "vivary emergency --paper cards.html",
			long: "Prints a card, a page each, for what may go wrong with the animals of this plan: somebody was stung, an animal is out, fire, leaving the house, a power cut with how long there is at each box, heat. Each has whom to ring; the emergency number and the poison centre are contacts with that role, else a frame to be filled in by hand. With --paper they are written as pages to be printed. They defer to local emergency numbers and to doctors."},
		{name: "labels", also: "label qr stickers tags", args: "[ENCLOSURE…]", short: "make labels for tanks", run: tankLabels, flags: "paper address keys out",
			many: true, try: "vivary labels burrow-a,burrow-b --paper labels.html",
			long: "Prints a label for each enclosure, or for those that are named: tub-1,tub-2 or tub-7 to 12. With --paper they are written as pages to be printed and cut out, and with --address each has a code by which a phone finds its page."},
		{name: "caresheet", also: "care factsheet profile", args: "[ENCLOSURE…]", short: "make the care sheet of an enclosure or a species, as this house keeps it", run: careSheets, flags: "paper out",
			many: true, try: "vivary caresheet burrow-a --paper caresheet.html",
			long: "Prints how the animals of an enclosure are kept here, for somebody who is new to them: what to mind, who lives there, box, warmth and damp, what is done and when, what is normal and what is not. Behind it is a page to go with each animal or group that is sold or given away: who they are, where from, papers, kin, last moult and meals, treatments, and room to sign. It is for the enclosures that are named, tub-1,tub-2 or tub-7 to 12, for those of a species, or for all. All of it is from plan, log, species sheet and register: what they do not have is a line to write on. With --paper it is written as pages to be printed."},
		{name: "register", also: "animals inventory stockbook stocklist", args: "[FOLDER]", short: "print the register of all animals", run: registerOf, flags: "on from format paper",
			try:  "vivary register --on 2026-04-01 --paper inventory.html",
			long: "Prints a row for every animal and every group that was ever here, from plan and log: species, how many by sexes, from where, papers, kin, moves, treatments, and what became of them; the dead keep their row. Below it is the balance of a year, or from the day that --from names: who was here, was born, came, died, left or was lost, and who is here. It is as of today, or of the end of the day that --on names, as that day is known now. With --paper it is pages with room to sign, which is an inventory; with --format csv a table for a spreadsheet (RFC 4180, UTF-8), in which an apostrophe stands before a cell that a spreadsheet would reckon with. Of listed species it names the fields that are not filled in. What the law asks for where you live is for you to look up."},
		{name: "stock", also: "feeders livefood shopping orders", args: "[FOLDER]", short: "print which feeder animals are needed, and what to order", run: stockOf, flags: "days format paper",
			try:  "vivary stock --days 28",
			long: "Prints how many feeder animals the meals of the coming weeks take, by feeder and size, as the calendars show these meals: after holds, absences and growth. Beside it stands what there is, as it was counted or delivered by the log, less what was fed since and what dies; what young that are expected will need; the orders with their packs and the day by which they are made; when cultures are set up; and where there is not enough, from which day on, and who eats first. What is kept and bought is written as culture, tub, supply and seller blocks. It is for four weeks, or so many days as --days says."},
		{name: "readings", also: "csv datalogger gauge import logger measure sensor", args: "[PLACE=]FILE…", short: "say what loggers showed of an enclosure", run: readingsOf, flags: "enclosure columns dates zone degrees day power note svg week narrow format",
			try:  "vivary readings air=loggers/burrow-a.csv room=loggers/east.csv --enclosure burrow-a",
			long: "Reads the tables that data loggers write, CSV of any shape, and holds them against what the plan aims for and what the species bears, by day and by night: how long it was outside, how far, the longest time of it, and how much of it is sure with a gauge as accurate as this one. Before a file stands what it is of: spot (the warm end), air (the cool end; so it is taken where nothing stands) or room. It says what it took for what, what is no reading, where the clock was changed, which lines it passed over, and where a sensor is at fault. Straight lines are drawn between readings; what happened in a gap of more than three steps is not known, and never guessed. From air and room together it says how the enclosure cools, what heat it loses and how often its air changes, where the series tells that, and a measured block for the plan, with which the plan reckons more narrowly. --note appends to the log what is said to be for it, and --svg draws the readings with their limits. A gauge block in the plan says which files are of which enclosure and place, and how the gauge was tested: readings are corrected by it."},
		{name: "level", also: "balance budget overload spread workload", args: "[FOLDER]", short: "propose other days for care, so that no day is too long", run: levelWork, flags: "write format out",
			try:  "vivary level",
			long: "Looks for other days for care, so that no day is longer than the budget of a keeper or the time of a round, with as few changes as it finds: care on days of the week as far as its window lets it, and care every so many days by the day from which it is counted. No need is met later than it may be, and nobody gets a longer day than the longest there was. It prints how long the days were and would be, what stands in the way where they stay too long, and the change as a patch of the plan. With --write it writes that, if no file has changed meanwhile."},
		{name: "caldav", also: "sync tasks reminders tick", args: "[FOLDER] ADDRESS", short: "keep the tasks of the coming days in a list on a phone", run: keepTasks, flags: "days keeper by login unencrypted",
			try:  "vivary caldav https://tasks.example/list/ --days 3 --by lead",
			long: "Puts what is due today and in the coming days (default: two) into a list of tasks on a CalDAV server, and writes what was ticked there into the log, with the time. The address is that of the list, or of a server whose user has one. Run it again and again, from a timer: a run with nothing new changes nothing. The user and the password are in a file that --login names, or in VIVARY_USER and VIVARY_PASSWORD. A tick is written by the keeper named with --by, else by whoever does it by the plan."},
		{name: "serve", also: "daemon run server web watch", args: "[FOLDER]", short: "serve calendars and pages to phones", run: servePages, flags: "out listen address certificate private-key keys measures notice-after unit",
			try:  "vivary serve --listen 127.0.0.1:8424",
			long: "Serves the calendars, and pages on which is what is due and on which it is ticked off, by private addresses that vivary keys prints. Plans and logs are watched, and the calendars are built when they change; while the plan is refused the last good ones stay, the pages say so at once, and each calendar after a day. Without --listen only this machine can reach it."},
		{name: "keys", also: "addresses secrets urls", args: "[FOLDER]", short: "print the private addresses, or renew one", run: printKeys, flags: "out address keys renew",
			try:  "vivary keys --address https://care.example",
			long: "Prints the private addresses of the calendars and of each keeper's pages, and makes those that are lacking. They are kept in a file outside the collection that only you can read. With --renew NAME a calendar, a keeper, page or labels has another address from then on, and whoever has the old one sees nothing any more."},
		{name: "why", also: "describe explain info show", args: "[NAME | ENCLOSURE/CARE]", short: "say why something is as it is", run: why, flags: "on svg narrow format",
			try:  "vivary why burrow-b/mist --on 2026-12-01",
			long: "Explains a rule, a species, a figure, a source, a feeder, a need, a kind of care, a round, an enclosure with its whole proof, or one care and why it is, or is not, on a day. A name that means several things is explained in each. Where the collection is in git it ends with the revision in which that was written. Without a name it lists what can be explained."},
		{name: "compare", also: "changes delta diff review", args: "[WAS [IS]]", short: "say what a change of the plan means for the animals", run: comparePlans, flags: "format whole if own-days library",
			try:  "vivary compare HEAD~1",
			long: "Compares two revisions of git, two folders, or a revision with the folder as it is; without a name, what is not committed yet with the last revision. It says what changes for the animals of each enclosure, the harm first and each with the lines that bring it, then for the people and on the phones. What only stands elsewhere or is laid out otherwise is no change, and both are judged as of one day. With --if it is the plan as it is, and as it would be with a file laid over it: a value or a block in it takes the place of the one of that name, all else is added. With --library the first is judged by the sheets of an earlier vivary, and what these say otherwise is told apart from the plan. The exit status is 0 where nothing changes for the animals, 3 where something does, 1 where the change does harm: it is refused, or urgent."},
		{name: "history", also: "log past story timeline", args: "ENCLOSURE", short: "say what the plan and the log said of an enclosure, and the year as it was", run: pastOf, flags: "format whole",
			try:  "vivary history burrow-a",
			long: "Goes through the revisions that git has of the collection, from what is not committed yet back, and tells those that changed anything for one enclosure: the day, who, and which revision, what that means for its animals as of that day, with the lines that bring it, and what came to the log about it. Then the past year as it was: on which days of each week each care stood by the plan that was in force then, and what the log says of it. An enclosure that was renamed with formerly is followed back, and one that is in the plan no more is found by the name that it had. It tells the last 20 steps of the last 400 revisions; with --whole all of them, and all lines of each."},
		{name: "editor", also: "language-server lsp server", short: "tell a text editor what is found while a plan is typed", run: serveEditor,
			try:  "vivary editor",
			long: "Speaks with a text editor on standard input and output, by the Language Server Protocol 3.17: what is found in plans and logs as they are typed, what may stand at a place and what it means, where a name is given, and the changes that findings would make. An editor starts it; examples/EDITORS.md says how."},
		{name: "tidy", also: "fmt format layout", args: "[FOLDER | FILE…]", short: "lay out plans in one way", run: tidyPlans, flags: "check name",
			try:  "vivary tidy enclosures",
			long: "Puts what stands in plans into the order of the reference page, aligns it, and spells units, days and times in one way: whole files or none of them, without another meaning, and with every comment. A block that cannot be read stays as it is. With --check nothing is written: it says what would change, and the exit status is 1 if anything would. A hyphen in place of a name reads standard input and writes standard output, for editors. Logs are never rewritten: lines that cannot be read are named."},
		{name: "completion", also: "complete tab shell", args: "SHELL", short: "print what makes a shell complete commands and names", run: completion,
			try:  "vivary completion bash",
			long: "Prints the script by which bash, zsh or fish completes what is typed after vivary: commands, flags, and the names of your collection, as it stands at that moment. In its first lines stands where it goes."},
		{name: "man", also: "manual manpage manpages", args: "FOLDER", short: "write pages for man", run: writeManual,
			try:  "vivary man share/man/man1",
			long: "Writes a page for vivary and one for each command into the folder, vivary.1 and vivary-COMMAND.1, for man and apropos: where it is below a folder of MANPATH, man vivary-note shows one. Pages that it wrote before are replaced, and nothing else."},
		{name: "version", short: "say which vivary this is", run: version, flags: "format library",
			try:  "vivary version",
			long: "Prints the version, the revision of the source, and which time zones are built in. With --library it writes its own sheets of species into a folder, so that a later vivary can say what it judges otherwise: vivary compare --library FOLDER."},
		{name: "help", args: "[COMMAND]", short: "say what a command does and which flags it takes", run: help,
			try:  "vivary help note",
			long: "Lists the commands, or says what one of them does."},
	}
}

// has reports whether the command takes a flag.
func (c *command) has(flag string) bool {
	return flag == "in" || flag == "now" || slices.Contains(strings.Fields(c.flags), flag)
}

// findCommand returns the command of a name, or nil.
func findCommand(name string) *command {
	for i := range commands {
		if commands[i].name == name {
			return &commands[i]
		}
	}
	return nil
}

// nearCommand returns the command that a word is likely meant for, or nil.
func nearCommand(word string) *command {
	var names []string
	for i := range commands {
		if slices.Contains(strings.Fields(commands[i].also), strings.ToLower(word)) {
			return &commands[i]
		}
		names = append(names, commands[i].name)
	}
	return findCommand(slip.Of(word, names))
}

// help prints what a command does, or lists all.
func help(w *world, _ *flags, args []string) int {
	if len(args) == 0 {
		fmt.Fprint(w.out, "vivary checks care plans for animals in enclosures and makes calendars of them.\n\n")
		listCommands(w.out)
		return fine
	}
	c := findCommand(args[0])
	if c == nil {
		return w.noCommand(args[0])
	}
	fmt.Fprintf(w.out, "vivary %s\n\n%s\n\n", strings.TrimSpace(c.name+" "+c.args), c.long)
	for _, f := range flagTable {
		if c.has(f.name) {
			fmt.Fprintf(w.out, "  --%-12s %-8s %s\n", f.name, f.value, f.doc)
		}
	}
	fmt.Fprintf(w.out, "\nFor example:\n\n  %s\n", c.try)
	return fine
}

func listCommands(out io.Writer) {
	for i := range commands {
		fmt.Fprintf(out, "  %-10s %s\n", commands[i].name, commands[i].short)
	}
	fmt.Fprint(out, "\nMore: vivary help COMMAND\n")
}
