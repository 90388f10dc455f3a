// Lists the occurrences of iCalendar feeds with ical.js; see ../README.md.
import { readFileSync } from "node:fs";
import ICAL from "ical.js";

const [fromText, toText, ...files] = process.argv.slice(2);
const instant = (s) => Date.UTC(+s.slice(0, 4), +s.slice(4, 6) - 1, +s.slice(6, 8), +s.slice(9, 11), +s.slice(11, 13), +s.slice(13, 15)) / 1000;
const from = instant(fromText);
const to = instant(toText);

const print = (time) => {
  const text = new Date(time.toUnixTime() * 1000).toISOString().replace(/[-:]|\.\d+/g, "");
  return time.isDate ? text.slice(0, 8) : text;
};

function* occurrences(text) {
  const parsed = ICAL.parse(text);
  if (parsed[0] !== "vcalendar") throw new Error("not one VCALENDAR");
  const calendar = new ICAL.Component(parsed);
  ICAL.TimezoneService.reset();
  for (const zone of calendar.getAllSubcomponents("vtimezone")) {
    ICAL.TimezoneService.register(new ICAL.Timezone(zone));
  }
  for (const component of calendar.getAllSubcomponents("vevent")) {
    for (const property of component.getAllProperties()) {
      const zone = property.getParameter("tzid");
      if (zone && !ICAL.TimezoneService.has(zone)) throw new Error(`no VTIMEZONE for ${zone}`);
    }
    const event = new ICAL.Event(component);
    const show = (start, end) => [event.uid, print(start), print(end), (event.summary ?? "").replace(/\\/g, "\\\\").replace(/\n/g, "\\n")];
    const inside = (time) => time.toUnixTime() >= from && time.toUnixTime() < to;
    if (!event.isRecurring()) {
      if (inside(event.startDate)) yield show(event.startDate, event.endDate);
      continue;
    }
    const iterator = event.iterator();
    for (let start = iterator.next(); start && start.toUnixTime() < to; start = iterator.next()) {
      if (inside(start)) {
        const details = event.getOccurrenceDetails(start);
        yield show(details.startDate, details.endDate);
      }
    }
  }
}

files.forEach((file, feed) => {
  let lines;
  try {
    lines = [...occurrences(readFileSync(file, "utf8"))];
  } catch (error) {
    lines = [["!", String(error.message).split("\n")[0]]];
  }
  for (const line of lines) console.log([feed, ...line].join("\t"));
});
