package org.loomwright.document.sheet.content;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.catalogue.Catalogue;
import org.loomwright.core.loom.Device;
import org.loomwright.core.loom.EarthPolarity;
import org.loomwright.core.loom.Finish;
import org.loomwright.core.loom.FittedFuse;
import org.loomwright.core.loom.Loom;
import org.loomwright.core.loom.Opening;
import org.loomwright.core.loom.Particulars;
import org.loomwright.core.loom.VehicleSheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the amendments that are not about single wires ask for, in words. */
public final class AmendmentWords {

    private final Loom before;
    private final Loom after;
    private final Catalogue catalogue;

    /**
     * @param before the stock loom
     * @param after the amended loom
     * @param catalogue names of coverings
     */
    public AmendmentWords(Loom before, Loom after, Catalogue catalogue) {
        this.before = before;
        this.after = after;
        this.catalogue = catalogue;
    }

    /** @return one sentence, empty for an amendment of a single wire, which stands in the wires' tables */
    public Optional<String> of(Amendment amendment) {
        return switch (amendment) {
            case Amendment.AddWire wire -> Optional.empty();
            case Amendment.RemoveWire wire -> Optional.empty();
            case Amendment.ReplaceWire wire -> Optional.empty();
            case Amendment.MoveWireEnd wire -> Optional.empty();
            case Amendment.ChangeTerminal wire -> Optional.empty();
            case Amendment.BreakOutBranch branch -> Optional.of(breakOut(branch));
            case Amendment.ExtendBranch branch -> Optional.of(extend(branch));
            case Amendment.ChangeLength length -> Optional.of(length(length));
            case Amendment.RemoveBranch branch ->
                    Optional.of("Take off branch " + stock(branch.segment()) + ".");
            case Amendment.AddDevice device ->
                    Optional.of(
                            "New on the vehicle: %s (%s)."
                                    .formatted(
                                            device.device().name(),
                                            device.device().kind().words()));
            case Amendment.RemoveDevice device ->
                    Optional.of("No longer on the vehicle: " + deviceName(device.device()) + ".");
            case Amendment.ChangeDevice device -> Optional.of(device(device));
            case Amendment.ChangeVehicle vehicle -> Optional.of(vehicle(vehicle));
            case Amendment.ChangeCovering covering ->
                    Optional.of(
                            "Cover segment %s with %s."
                                    .formatted(
                                            segment(covering.segment()),
                                            finish(covering.finish())));
            case Amendment.AddOpening opening ->
                    Optional.of(
                            "Segment %s gets a %s."
                                    .formatted(
                                            segment(opening.segment()),
                                            opening(opening.opening())));
            case Amendment.RemoveOpening opening ->
                    Optional.of("Opening %s is no longer there.".formatted(opening.opening()));
        };
    }

    private String breakOut(Amendment.BreakOutBranch branch) {
        return "Break out a new branch %s, %s long, at %s along segment %s; new breakout “%s”, new end “%s”; %s."
                .formatted(
                        branch.branch().id(),
                        branch.branch().length(),
                        branch.at(),
                        stock(branch.segment()),
                        branch.breakout().name(),
                        branch.end().name(),
                        finish(branch.branch().finish()));
    }

    private String extend(Amendment.ExtendBranch branch) {
        return "Run the loom on from “%s” by a new segment %s, %s long, to “%s”; %s."
                .formatted(
                        Places.node(after, branch.branch().from()),
                        branch.branch().id(),
                        branch.branch().length(),
                        branch.end().name(),
                        finish(branch.branch().finish()));
    }

    private String length(Amendment.ChangeLength change) {
        var was = before.segments().get(change.segment());
        return "Make segment %s %s long%s."
                .formatted(
                        segment(change.segment()),
                        change.length(),
                        was == null ? "" : ", was " + was.length());
    }

    private static String opening(Opening opening) {
        return "%s “%s” of %s clear diameter, %s from the end nearer the datum"
                .formatted(
                        opening.kind().words(),
                        opening.name(),
                        opening.clearDiameter(),
                        opening.position());
    }

    private String device(Amendment.ChangeDevice change) {
        Device was = before.devices().get(change.device());
        List<String> facts = new ArrayList<>();
        Particulars said = change.particulars();
        say(facts, "load", change.load());
        say(facts, "rating", said.rating());
        say(facts, "made for", said.voltage());
        EarthPolarity earth = said.needsEarth();
        say(facts, "needs earth", earth == null ? null : earth.words());
        for (FittedFuse fuse : said.fuses()) {
            String place = "fuse %s to %s".formatted(fuse.from(), fuse.to());
            say(facts, place, fuse.marked() + ", " + fuse.style().words());
        }
        return "%s is now: %s (%s)%s."
                .formatted(
                        was == null
                                ? "Device " + change.device()
                                : "%s (%s)".formatted(was.name(), was.kind().words()),
                        change.name(),
                        change.kind().words(),
                        facts.isEmpty() ? "" : "; " + String.join("; ", facts));
    }

    private static void say(List<String> facts, String what, @Nullable Object value) {
        if (value != null) {
            facts.add(what + " " + value);
        }
    }

    private String vehicle(Amendment.ChangeVehicle change) {
        VehicleSheet was = before.document().vehicle();
        return "The vehicle: %s earth and %s; as recorded %s earth and %s."
                .formatted(
                        change.earth().words(), change.system(), was.earth().words(), was.system());
    }

    private String deviceName(String id) {
        return before.devices().containsKey(id) ? before.getDevice(id).name() : id;
    }

    private String segment(String id) {
        return Places.segment(after, id);
    }

    private String stock(String id) {
        return Places.segment(before, id);
    }

    /** @return a covering in words, with yarns, picks and lacquer where they are recorded */
    public String finish(Finish finish) {
        StringBuilder words = new StringBuilder(coveringName(finish.covering()));
        if (finish.baseYarn() != null) {
            words.append(", base yarn ").append(finish.baseYarn());
        }
        if (!finish.tracers().isEmpty()) {
            words.append(", tracer ").append(String.join(", ", finish.tracers()));
        }
        if (finish.picksPer25Mm() != null) {
            words.append(", %d picks on 25 mm".formatted(finish.picksPer25Mm()));
        }
        if (finish.lacquerCoats() > 0) {
            words.append(", ")
                    .append(Figures.count(finish.lacquerCoats(), "coat", "coats"))
                    .append(" of lacquer");
        }
        return words.toString();
    }

    /** @return why we believe a finish, in words */
    public static String evidence(Finish finish) {
        String kind = finish.evidence().kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        String note = finish.evidence().note();
        return note.isBlank() ? kind : kind + ": " + note;
    }

    private String coveringName(String code) {
        return catalogue.findCovering(code).map(covering -> covering.name()).orElse(code);
    }
}
