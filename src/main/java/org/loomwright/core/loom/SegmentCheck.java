package org.loomwright.core.loom;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.Covering;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;

import java.util.List;
import java.util.stream.Stream;

/** Whether each segment can be true by itself: length, readings, departure, covering, openings. */
final class SegmentCheck {

    private static final int MOST_BEND_DEGREES = 3_600;
    private static final int MOST_PICKS = 100;
    private static final int MOST_COATS = 20;

    private final Faults faults;
    private final Catalogue catalogue;

    SegmentCheck(Faults faults, Catalogue catalogue) {
        this.faults = faults;
        this.catalogue = catalogue;
    }

    void checkAll(List<Segment> segments) {
        for (int i = 0; i < segments.size(); i++) {
            Segment segment = segments.get(i);
            check(segment, new Subject(ThingKind.SEGMENT, segment.id(), "/segments/" + i));
        }
    }

    private void check(Segment segment, Subject subject) {
        faults.checkLength(subject, "length", segment.length(), LoomLimits.LONGEST_SEGMENT);
        faults.checkCount(subject, "readings", segment.readings().size(), LoomLimits.MOST_ROWS);
        segment.readings()
                .forEach(
                        reading ->
                                faults.checkLength(
                                        subject, "reading", reading, LoomLimits.LONGEST_SEGMENT));
        checkRange(subject, "sum of bends in degrees", segment.bendDegrees(), MOST_BEND_DEGREES);
        checkDeparture(subject, segment.leaves());
        checkFinish(subject, segment.finish());
        checkOpenings(segment, subject);
    }

    private void checkDeparture(Subject subject, @Nullable Departure leaves) {
        if (leaves == null) {
            return;
        }
        faults.addUnless(
                leaves.clock() >= 1 && leaves.clock() <= 12,
                "clock-not-sane",
                subject,
                "%s leaves at %d o'clock; it must be 1 to 12.",
                subject.words(),
                leaves.clock());
        checkRange(subject, "angle of departure in degrees", leaves.angleDegrees(), 180);
    }

    private void checkFinish(Subject subject, Finish finish) {
        checkRange(subject, "number of lacquer coats", finish.lacquerCoats(), MOST_COATS);
        if (finish.picksPer25Mm() != null) {
            checkRange(subject, "picks per 25 mm", finish.picksPer25Mm(), MOST_PICKS);
        }
        faults.checkCount(subject, "tracers", finish.tracers().size(), LoomLimits.MOST_ROWS);
        faults.addUnless(
                finish.evidence().note().length() <= LoomLimits.LONGEST_TEXT,
                "text-length",
                subject,
                "The evidence for the finish of %s must have at most %d characters.",
                subject.words(),
                LoomLimits.LONGEST_TEXT);
        catalogue
                .findCovering(finish.covering())
                .ifPresentOrElse(
                        covering -> checkYarns(subject, finish, covering),
                        () ->
                                faults.add(
                                        "covering-unknown",
                                        subject,
                                        "%s has covering '%s', which the catalogue does not know."
                                                .formatted(subject.words(), finish.covering())));
    }

    private void checkYarns(Subject subject, Finish finish, Covering covering) {
        Stream.concat(Stream.ofNullable(finish.baseYarn()), finish.tracers().stream())
                .filter(letters -> catalogue.findColour(letters).isEmpty())
                .forEach(
                        letters ->
                                faults.add(
                                        "colour-unknown",
                                        subject,
                                        "%s has yarn of colour '%s', which the catalogue does not know."
                                                .formatted(subject.words(), letters)));
        faults.addUnless(
                covering.woven() || (finish.baseYarn() == null && finish.tracers().isEmpty()),
                "yarn-without-weave",
                subject,
                "%s names yarn colours, but its covering, %s, is not woven.",
                subject.words(),
                covering.name());
        faults.addUnless(
                !covering.woven() || finish.baseYarn() != null,
                "yarn-missing",
                subject,
                "%s has a woven covering, %s, and so needs the colour of its main yarn.",
                subject.words(),
                covering.name());
    }

    private void checkOpenings(Segment segment, Subject under) {
        faults.checkCount(under, "openings", segment.openings().size(), LoomLimits.MOST_ROWS);
        for (int i = 0; i < segment.openings().size(); i++) {
            Opening opening = segment.openings().get(i);
            Subject subject =
                    new Subject(
                            ThingKind.OPENING, opening.id(), under.pointer() + "/openings/" + i);
            faults.checkText(subject, "name", opening.name());
            faults.checkLength(
                    subject, "clear diameter", opening.clearDiameter(), LoomLimits.WIDEST_OPENING);
            faults.addUnless(
                    !opening.position().isNegative()
                            && !opening.position().isLongerThan(segment.length()),
                    "opening-off-segment",
                    subject,
                    "Opening %s stands at %s on segment %s, which runs from 0 mm to %s.",
                    opening.id(),
                    opening.position(),
                    segment.id(),
                    segment.length());
        }
    }

    private void checkRange(Subject subject, String what, int value, int most) {
        faults.addUnless(
                value >= 0 && value <= most,
                "number-not-sane",
                subject,
                "The %s of %s is %d; it must be 0 to %d.",
                what,
                subject.words(),
                value,
                most);
    }
}
