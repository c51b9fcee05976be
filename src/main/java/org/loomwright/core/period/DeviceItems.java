package org.loomwright.core.period;

import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.DeviceKind;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.period.Comparison.Sight;
import org.loomwright.core.period.Comparison.Verdict;
import org.loomwright.core.period.PeriodItem.Aspect;
import org.loomwright.core.period.PeriodPart.Kind;

import java.util.Locale;

/** Kind and fuses of every device that is new or differs from how it was recorded. */
final class DeviceItems {

    private static final String AN_ADDITION =
            "A strict judge marks it as an addition if it was not delivered with the vehicle.";
    private static final String OUT_OF_PERIOD =
            "A strict judge marks it, as an addition and as not of the period.";

    private final Comparison comparison;
    private final ItemList items;

    DeviceItems(Comparison comparison, ItemList items) {
        this.comparison = comparison;
        this.items = items;
    }

    void addAll() {
        comparison.loom().devices().values().stream()
                .filter(device -> comparison.isNew(ThingKind.DEVICE, device.id()))
                .forEach(this::add);
    }

    private void add(Device device) {
        Subject subject = Subject.of(ThingKind.DEVICE, device.id());
        Sight sight = comparison.sightOf(device);
        if (device.kind() != DeviceKind.FUSE) {
            items.add(subject, Aspect.DEVICE, device.name(), asJudge(device, judge(device, sight)));
        }
        for (FittedFuse fuse : device.particulars().fuses()) {
            items.add(subject, Aspect.FUSE, words(fuse), judge(fuse, sight));
        }
        if (holdsFuses(device) && device.particulars().fuses().isEmpty()) {
            items.add(
                    subject,
                    Aspect.FUSE,
                    device.name(),
                    Verdict.of(
                            Judgement.UNKNOWN,
                            "Nobody said which fuses sit in it: say whether they are of glass or"
                                    + " modern blades."));
        }
    }

    /** What a strict judge of originality makes of it, in general words. */
    private Verdict asJudge(Device device, Verdict verdict) {
        boolean isFixing =
                device.kind() == DeviceKind.EARTH_POINT
                        || device.kind() == DeviceKind.JOINT
                        || device.kind() == DeviceKind.CONNECTOR;
        if (isFixing || !comparison.isAdded(ThingKind.DEVICE, device.id())) {
            return verdict;
        }
        return switch (verdict.judgement()) {
            case AS_PERIOD, UNKNOWN, HIDDEN_DEVIATION -> verdict.saying(AN_ADDITION);
            case VISIBLE_DEVIATION -> verdict.saying(OUT_OF_PERIOD);
        };
    }

    private static boolean holdsFuses(Device device) {
        return device.kind() == DeviceKind.FUSE || device.kind() == DeviceKind.FUSE_BOX;
    }

    /** A word that tells of a later time goes before the kind. */
    private Verdict judge(Device device, Sight sight) {
        return comparison
                .tables()
                .findWord(device.name())
                .filter(part -> !part.wasUsualIn(comparison.year()))
                .map(part -> comparison.judge(part, sight))
                .orElseGet(() -> comparison.judge(Kind.DEVICE, code(device.kind()), sight));
    }

    private Verdict judge(FittedFuse fuse, Sight sight) {
        return comparison.judge(Kind.FUSE, code(fuse.style()), sight);
    }

    private static String words(FittedFuse fuse) {
        return "%s fuse, %s, from %s to %s"
                .formatted(fuse.style().words(), fuse.marked(), fuse.from(), fuse.to());
    }

    private static String code(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
