package rigmorrow.app.calendar;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.ComponentList;
import net.fortuna.ical4j.model.component.Standard;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.component.VTimeZone;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.Location;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.TzId;
import net.fortuna.ical4j.model.property.TzOffsetFrom;
import net.fortuna.ical4j.model.property.TzOffsetTo;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.XProperty;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;

/** Writes calendars as RFC 5545 wants them, with times in UTC: they are right in every zone. */
final class CalendarText {
  private static final String PRODUCT = "-//Rigmorrow//Rigmorrow//EN";
  private static final String LINE_END = "\r\n";

  /** RFC 5545, section 3.1: octets of a line without its end. */
  private static final int LONGEST_LINE = 75;

  private CalendarText() {}

  /**
   * A calendar.
   *
   * @param name what a calendar program shows
   * @param stamp when it was made
   */
  static String of(String name, List<Event> events, Instant stamp) {
    Calendar calendar = new Calendar();
    calendar.add(new ProdId(PRODUCT));
    calendar.add(ImmutableVersion.VERSION_2_0);
    calendar.add(ImmutableCalScale.GREGORIAN);
    calendar.add(new XProperty("X-WR-CALNAME", clean(name)));
    events.forEach(event -> calendar.add(component(event, stamp)));
    if (events.isEmpty()) {
      calendar.add(utc());
    }
    return folded(calendar.toString());
  }

  /** A calendar must have a component (RFC 5545, section 3.6); this one says nothing untrue. */
  private static VTimeZone utc() {
    Standard always = new Standard();
    always.add(new DtStart<>(LocalDate.EPOCH.atStartOfDay()));
    always.add(new TzOffsetFrom(ZoneOffset.UTC));
    always.add(new TzOffsetTo(ZoneOffset.UTC));
    VTimeZone zone = new VTimeZone(new ComponentList<>(List.of(always)));
    zone.add(new TzId("UTC"));
    return zone;
  }

  private static VEvent component(Event event, Instant stamp) {
    VEvent component = new VEvent(false);
    component.add(new Uid(event.uid()));
    component.add(new DtStamp(stamp));
    component.add(new DtStart<>(event.start()));
    if (event.end().isAfter(event.start())) {
      // An end must be later than its start; without one the event ends as it starts.
      component.add(new DtEnd<>(event.end()));
    }
    component.add(new Summary(clean(event.summary())));
    component.add(new Location(clean(event.location())));
    component.add(new Description(clean(event.description())));
    return component;
  }

  /** Control characters other than the line feed are no text (RFC 5545, section 3.3.11). */
  private static String clean(String text) {
    return text.replaceAll("[\\p{Cntrl}&&[^\\n]]", " ");
  }

  /**
   * Breaks lines of more than 75 octets (RFC 5545, section 3.1), never within a character: the
   * library counts characters, of which one may have four octets.
   */
  static String folded(String lines) {
    StringBuilder folded = new StringBuilder(lines.length());
    for (String line : lines.split("\r?\n")) {
      int octets = 0;
      for (int letter : line.codePoints().toArray()) {
        String text = Character.toString(letter);
        int length = text.getBytes(StandardCharsets.UTF_8).length;
        if (octets + length > LONGEST_LINE) {
          folded.append(LINE_END).append(' ');
          octets = 1;
        }
        folded.append(text);
        octets += length;
      }
      folded.append(LINE_END);
    }
    return folded.toString();
  }
}
