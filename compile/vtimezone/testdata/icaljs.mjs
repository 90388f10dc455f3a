// Converts local times to UTC with ical.js and nothing but the VTIMEZONEs of a
// file. Arguments: the file, and a folder that holds node_modules. An input line
// "Europe/London 20270329T010000" is answered by "20270329T000000Z". (The other
// direction is no use as a check: ical.js 2.2.1 takes UTC for local there.)
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";

const [file, oracles] = process.argv.slice(2);
const found = createRequire(resolve(oracles, "package.json")).resolve("ical.js");
const ICAL = (await import(pathToFileURL(found))).default;

const calendar = new ICAL.Component(ICAL.parse(readFileSync(file, "utf8")));
const zones = new Map();
for (const component of calendar.getAllSubcomponents("vtimezone")) {
  const zone = new ICAL.Timezone(component);
  zones.set(zone.tzid, zone);
}

const answers = [];
for (const line of readFileSync(0, "utf8").trim().split("\n")) {
  const [tzid, text] = line.split(" ");
  const time = ICAL.Time.fromString(
    text.replace(/^(....)(..)(..T..)(..)(..)$/, "$1-$2-$3:$4:$5"));
  time.zone = zones.get(tzid);
  answers.push(time.convertToZone(ICAL.Timezone.utcTimezone).toICALString());
}
process.stdout.write(answers.join("\n") + "\n");
