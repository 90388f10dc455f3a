/* Converts local times to UTC with libical and nothing but the VTIMEZONEs of a
 * file, its argument. An input line "Europe/London 20270329T010000" is answered
 * by "20270329T000000Z". */
#include <libical/ical.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static char *read_all(const char *path)
{
    FILE *f = fopen(path, "rb");
    if (f == NULL || fseek(f, 0, SEEK_END) != 0)
        return NULL;
    long size = ftell(f);
    char *text = calloc((size_t)size + 1, 1);
    rewind(f);
    if (text == NULL || fread(text, 1, (size_t)size, f) != (size_t)size)
        return NULL;
    fclose(f);
    return text;
}

static icaltimezone *find(icalcomponent *calendar, const char *tzid)
{
    icalcomponent *c = icalcomponent_get_first_component(calendar, ICAL_VTIMEZONE_COMPONENT);
    for (; c != NULL; c = icalcomponent_get_next_component(calendar, ICAL_VTIMEZONE_COMPONENT)) {
        icalproperty *p = icalcomponent_get_first_property(c, ICAL_TZID_PROPERTY);
        if (p != NULL && strcmp(icalproperty_get_tzid(p), tzid) == 0) {
            icaltimezone *zone = icaltimezone_new();
            if (icaltimezone_set_component(zone, icalcomponent_new_clone(c)))
                return zone;
        }
    }
    return NULL;
}

int main(int argc, char **argv)
{
    char *text = argc == 2 ? read_all(argv[1]) : NULL;
    icalcomponent *calendar = text != NULL ? icalparser_parse_string(text) : NULL;
    if (calendar == NULL || icalcomponent_count_errors(calendar) != 0) {
        fprintf(stderr, "the file cannot be read as iCalendar\n");
        return 1;
    }
    char tzid[128], value[32], last[128] = "";
    icaltimezone *zone = NULL;
    while (scanf("%127s %31s", tzid, value) == 2) {
        if (strcmp(tzid, last) != 0) {
            zone = find(calendar, tzid);
            strcpy(last, tzid);
        }
        if (zone == NULL) {
            fprintf(stderr, "no VTIMEZONE for %s\n", tzid);
            return 1;
        }
        icaltimetype t = icaltime_from_string(value);
        t = icaltime_set_timezone(&t, zone);
        t = icaltime_convert_to_zone(t, icaltimezone_get_utc_timezone());
        printf("%s\n", icaltime_as_ical_string(t));
    }
    return 0;
}
