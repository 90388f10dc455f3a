/* Lists the occurrences of iCalendar feeds with libical; see ../README.md. */
#include <libical/ical.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

struct window {
    int feed;
    time_t from, to;
};

static char *read_file(const char *path)
{
    FILE *f = fopen(path, "rb");
    if (!f) {
        perror(path);
        exit(2);
    }
    size_t used = 0, room = 1 << 16;
    char *text = malloc(room);
    for (size_t n; (n = fread(text + used, 1, room - used - 1, f)) > 0; used += n)
        if (room - used - 1 == n)
            text = realloc(text, room *= 2);
    text[used] = 0;
    fclose(f);
    return text;
}

static void print_time(time_t t, int is_date)
{
    char text[32];
    strftime(text, sizeof text, is_date ? "%Y%m%d" : "%Y%m%dT%H%M%SZ", gmtime(&t));
    printf("\t%s", text);
}

static void print_summary(const char *s)
{
    putchar('\t');
    for (; s && *s; s++) {
        if (*s == '\n')
            fputs("\\n", stdout);
        else if (*s == '\\')
            fputs("\\\\", stdout);
        else
            putchar(*s);
    }
    putchar('\n');
}

static void print_occurrence(icalcomponent *event, struct icaltime_span *span, void *data)
{
    struct window *w = data;
    if (span->start < w->from || span->start >= w->to)
        return;
    int is_date = icalcomponent_get_dtstart(event).is_date;
    printf("%d\t%s", w->feed, icalcomponent_get_uid(event));
    print_time(span->start, is_date);
    print_time(span->end, is_date);
    print_summary(icalcomponent_get_summary(event));
}

/* Returns the first TZID of a component's properties that the feed does not define, or NULL. */
static const char *undefined_zone(icalcomponent *calendar, icalcomponent *event)
{
    icalproperty *p = icalcomponent_get_first_property(event, ICAL_ANY_PROPERTY);
    for (; p; p = icalcomponent_get_next_property(event, ICAL_ANY_PROPERTY)) {
        icalparameter *zone = icalproperty_get_first_parameter(p, ICAL_TZID_PARAMETER);
        if (zone && !icalcomponent_get_timezone(calendar, icalparameter_get_tzid(zone)))
            return icalparameter_get_tzid(zone);
    }
    return NULL;
}

/* Returns why the calendar is not to be used, or NULL. */
static const char *refuse(icalcomponent *calendar)
{
    static char reason[200];
    if (!calendar || icalcomponent_isa(calendar) != ICAL_VCALENDAR_COMPONENT)
        return "not one VCALENDAR";
    if (icalcomponent_count_errors(calendar) > 0)
        return "the parser reports errors";
    icalcomponent *event = icalcomponent_get_first_component(calendar, ICAL_VEVENT_COMPONENT);
    for (; event; event = icalcomponent_get_next_component(calendar, ICAL_VEVENT_COMPONENT)) {
        const char *zone = undefined_zone(calendar, event);
        if (zone) {
            snprintf(reason, sizeof reason, "no VTIMEZONE for %s", zone);
            return reason;
        }
    }
    return NULL;
}

int main(int argc, char **argv)
{
    if (argc < 3) {
        fprintf(stderr, "usage: %s FROM TO FILE...\n", argv[0]);
        return 2;
    }
    icalerror_set_errors_are_fatal(0);
    struct icaltimetype from = icaltime_from_string(argv[1]), to = icaltime_from_string(argv[2]);
    struct window w = {0, icaltime_as_timet(from), icaltime_as_timet(to)};
    for (int i = 3; i < argc; i++) {
        w.feed = i - 3;
        char *text = read_file(argv[i]);
        icalcomponent *calendar = icalparser_parse_string(text);
        const char *reason = refuse(calendar);
        if (reason) {
            printf("%d\t!\t%s\n", w.feed, reason);
        } else {
            icalcomponent *event = icalcomponent_get_first_component(calendar, ICAL_VEVENT_COMPONENT);
            for (; event; event = icalcomponent_get_next_component(calendar, ICAL_VEVENT_COMPONENT))
                icalcomponent_foreach_recurrence(event, from, to, print_occurrence, &w);
        }
        if (calendar)
            icalcomponent_free(calendar);
        free(text);
    }
    return 0;
}
