package org.loomwright.core.period;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.amendment.AmendedLoom;
import org.loomwright.core.amendment.Origin;
import org.loomwright.core.amendment.Origin.Act;
import org.loomwright.core.amendment.Origin.ByAmendment;
import org.loomwright.core.amendment.Origin.Stock;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Segment;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.period.PeriodPart.Kind;
import org.loomwright.core.period.PeriodPart.Seen;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A stock loom beside the amended one, and how a part of it is judged. */
final class Comparison {

    private static final Sight NOWHERE = new Sight(null, "");
    private static final Pattern WHERE = Pattern.compile("\\b(in|on|under|behind) ");

    private final Loom stock;
    private final AmendedLoom amended;
    private final Catalogue catalogue;
    private final PeriodTables tables;
    private final int year;

    /** A judgement with its reasons. */
    record Verdict(
            Judgement judgement,
            String why,
            @Nullable Provenance basis,
            @Nullable String alternative) {

        static Verdict of(Judgement judgement, String why) {
            return new Verdict(judgement, why, null, null);
        }

        Verdict saying(String more) {
            return new Verdict(judgement, why + " " + more, basis, alternative);
        }

        Verdict instead(String better) {
            return new Verdict(judgement, why, basis, better);
        }
    }

    /** Whether something is seen there, null where nobody knows, and the place in words. */
    record Sight(@Nullable Boolean isSeen, String where) {}

    Comparison(Loom stock, AmendedLoom amended, Catalogue catalogue, PeriodTables tables) {
        this.stock = stock;
        this.amended = amended;
        this.catalogue = catalogue;
        this.tables = tables;
        this.year = stock.document().vehicle().year();
    }

    Loom stock() {
        return stock;
    }

    AmendedLoom amended() {
        return amended;
    }

    Loom loom() {
        return amended.loom();
    }

    Catalogue catalogue() {
        return catalogue;
    }

    PeriodTables tables() {
        return tables;
    }

    int year() {
        return year;
    }

    boolean isAdded(ThingKind kind, String id) {
        return amended.origin(kind, id) instanceof ByAmendment(Act act, var amendments)
                && act == Act.ADDED;
    }

    boolean isNew(ThingKind kind, String id) {
        Origin origin = amended.origin(kind, id);
        return !(origin instanceof Stock);
    }

    /** Judges by the table alone, for a part that the recorded loom does not show. */
    Verdict judge(Kind kind, String code, Sight sight) {
        Optional<PeriodPart> row = tables.find(kind, code);
        return row.map(part -> judge(part, sight))
                .orElseGet(
                        () ->
                                Verdict.of(
                                        Judgement.UNKNOWN,
                                        "The table does not say when this was usual: say whether it"
                                                + " is of the period."));
    }

    Verdict judge(PeriodPart part, Sight sight) {
        String alternative = part.alternative().isEmpty() ? null : part.alternative();
        if (part.seen() == Seen.ASK) {
            String ask = sentence(part.reason()) + " Say whether this one is of the period.";
            return new Verdict(Judgement.UNKNOWN, ask, part.provenance(), alternative);
        }
        if (part.wasUsualIn(year)) {
            return new Verdict(
                    Judgement.AS_PERIOD, sentence(part.reason()), part.provenance(), null);
        }
        String reason = sentence(part.reason() + "; the vehicle is of " + year);
        boolean isInside = part.seen() == Seen.NEVER;
        return new Verdict(
                isInside ? Judgement.HIDDEN_DEVIATION : deviation(sight),
                isInside ? reason : reason + " " + words(sight),
                part.provenance(),
                alternative);
    }

    static Judgement deviation(Sight sight) {
        if (sight.isSeen() == null) {
            return Judgement.UNKNOWN;
        }
        return sight.isSeen() ? Judgement.VISIBLE_DEVIATION : Judgement.HIDDEN_DEVIATION;
    }

    static String words(Sight sight) {
        if (sight.isSeen() == null) {
            return "Say whether it can be seen.";
        }
        return "Its place, %s, tells that it %s be seen."
                .formatted(sight.where(), sight.isSeen() ? "can" : "cannot");
    }

    static String sentence(String clause) {
        int first = Character.toUpperCase(clause.codePointAt(0));
        return Character.toString(first)
                + clause.substring(Character.charCount(clause.codePointAt(0)))
                + ".";
    }

    /** Whether an end of a wire is seen, as far as the names of its node and device tell. */
    Sight sightOf(WireEnd end) {
        Device device = loom().getDevice(end.device());
        return find(loom().getPoint(end).node(), device.name())
                .map(place -> new Sight(place.wires(), place.name()))
                .orElse(NOWHERE);
    }

    /** Whether the device itself is seen. */
    Sight sightOf(Device device) {
        return find(device.points().getFirst().node(), device.name())
                .map(place -> new Sight(place.device(), place.name()))
                .orElse(NOWHERE);
    }

    /** Whether the cover of a leg that ends at the node is seen. */
    Sight sightOfNode(String node) {
        return tables.findPlace(loom().getNode(node).name())
                .map(place -> new Sight(place.wires(), place.name()))
                .orElse(NOWHERE);
    }

    /** Whether an opening is seen: its name tells where it is, or else the node that its segment leads to. */
    Sight sightOf(Opening opening, Segment segment) {
        return tables.findPlace(opening.name())
                .map(place -> new Sight(place.wires(), place.name()))
                .orElseGet(() -> sightOfNode(segment.to()));
    }

    /** The node tells where a thing is, or else what follows on "in", "on", "under" or "behind" in the thing's name. */
    private Optional<Place> find(String node, String deviceName) {
        return tables.findPlace(loom().getNode(node).name())
                .or(() -> placeWords(deviceName).flatMap(tables::findPlace));
    }

    private static Optional<String> placeWords(String name) {
        Matcher matcher = WHERE.matcher(name);
        return matcher.find() ? Optional.of(name.substring(matcher.start())) : Optional.empty();
    }
}
