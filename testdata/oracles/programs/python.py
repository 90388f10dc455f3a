"""Lists the occurrences of iCalendar feeds with python-icalendar and
recurring_ical_events; see ../README.md."""
import datetime
import sys

import icalendar
import recurring_ical_events


def instant(text):
    return datetime.datetime.strptime(text, "%Y%m%dT%H%M%SZ").replace(tzinfo=datetime.timezone.utc)


def utc(value):
    if isinstance(value, datetime.datetime):
        if value.tzinfo is None:
            raise ValueError("floating time")
        return value.astimezone(datetime.timezone.utc)
    return datetime.datetime(value.year, value.month, value.day, tzinfo=datetime.timezone.utc)


def show(value):
    return utc(value).strftime("%Y%m%dT%H%M%SZ" if isinstance(value, datetime.datetime) else "%Y%m%d")


def occurrences(path, start, stop):
    with open(path, "rb") as f:
        calendar = icalendar.Calendar.from_ical(f.read())
    if calendar.name != "VCALENDAR":
        raise ValueError("not one VCALENDAR")
    # A day of margin: the library reads the ends of the window in a zone of its own choice for dates.
    day = datetime.timedelta(days=1)
    for event in recurring_ical_events.of(calendar).between(start - day, stop + day):
        first, end = event["DTSTART"].dt, event["DTEND"].dt
        if start <= utc(first) < stop:
            summary = str(event.get("SUMMARY", "")).replace("\\", "\\\\").replace("\n", "\\n")
            yield [str(event["UID"]), show(first), show(end), summary]


def main(start, stop, *paths):
    start, stop = instant(start), instant(stop)
    for feed, path in enumerate(paths):
        try:
            lines = list(occurrences(path, start, stop))
        except Exception as error:  # whatever the library throws at a bad feed
            lines = [["!", (str(error) or type(error).__name__).splitlines()[0]]]
        for line in lines:
            print(feed, *line, sep="\t")


if __name__ == "__main__":
    sys.stdout.reconfigure(encoding="utf-8")
    main(*sys.argv[1:])
