package org.loomwright.core.kit.expansion;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.catalogue.ConductorSize;
import org.loomwright.core.catalogue.Provenance;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.electrical.Derating;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.core.kit.WirePart;
import org.loomwright.core.loom.Condition;
import org.loomwright.core.loom.Wire;
import org.loomwright.core.loom.WireEnd;
import org.loomwright.core.quantity.Current;
import org.loomwright.core.quantity.Length;
import org.loomwright.core.routing.TakeUp;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes the wires that a recipe adds: ends, size, colour and terminals. */
final class WireMaker {

    private static final String SOLDERED = "solder";

    private final Draft draft;
    private final List<Job> jobs = new ArrayList<>();
    private final Protection protection;
    private final Terminals terminals;

    WireMaker(Draft draft) {
        this.draft = draft;
        this.protection = new Protection(draft, jobs);
        this.terminals = new Terminals(draft);
    }

    void make(Sizing sizing) {
        draft.feeds.values().forEach(this::joinOwnFuse);
        for (WirePart part : draft.recipe.wires()) {
            if (part.when().holds(draft.facts)) {
                join(part);
            }
        }
        jobs.forEach(this::need);
        for (int pass = 0; pass < 2; pass++) {
            jobs.forEach(job -> size(job, sizing));
        }
        if (draft.findings.isEmpty()) {
            new Drops(draft, sizing, jobs).keep();
            jobs.forEach(job -> add(job, sizing));
        }
    }

    /** The wire from the point of the loom to the feed's own fuse. */
    private void joinOwnFuse(FeedChoice feed) {
        String key = feed.part().fuse();
        if (!feed.option().ownFuse() || key == null || !draft.made.containsKey(key)) {
            return;
        }
        Place in = draft.place(key + "/" + FeedChoice.fusePart(draft, key).from());
        WirePart part =
                new WirePart(
                        "",
                        "",
                        WirePart.BY_SUPPLY,
                        Draft.RULE,
                        feed.part().feeds(),
                        null,
                        null,
                        feed.part().when());
        Job job = job(part, feed.at(), in);
        job.needed = protection.size(draft.device(key), FeedChoice.fusePart(draft, key).to());
        jobs.add(job);
    }

    private void join(WirePart part) {
        Earths earths = new Earths(draft);
        Place from =
                part.from().equals(WirePart.EARTH)
                        ? earths.near(draft.place(part.to()))
                        : draft.place(part.from());
        Place to = part.to().equals(WirePart.EARTH) ? earths.near(from) : draft.place(part.to());
        jobs.add(job(part, from, to));
    }

    private Job job(WirePart part, Place from, Place to) {
        if (!isInside(from, to)) {
            draft.countEnd(from);
            draft.countEnd(to);
        }
        String a = from.point().node();
        String b = to.point().node();
        Length measured =
                draft.routes.distance(a, b).plus(from.point().tail()).plus(to.point().tail());
        Length takeUp =
                switch (draft.bench.settings().electrical().allowances().takeUp()) {
                    case TakeUp.Given given -> measured.times(given.ratio(), RoundingMode.CEILING);
                    case TakeUp.FromLay lay -> measured.times(lay.helix(), RoundingMode.CEILING);
                };
        return new Job(
                part,
                from,
                to,
                draft.routes.between(a, b),
                measured.plus(takeUp),
                draft.load(part.carries()));
    }

    /** A link between terminals of one old device is a bar inside it and takes no room on its screws. */
    private boolean isInside(Place from, Place to) {
        return from.device().equals(to.device()) && !draft.made.containsValue(from.device());
    }

    private void need(Job job) {
        job.fuse = protection.fuseBefore(job);
        Current bearing =
                job.part.bearing() == null ? Current.ZERO : draft.current(job.part.bearing());
        job.needed = most(most(job.needed, bearing), job.load);
        if (job.fuse != null) {
            job.needed = most(job.needed, job.fuse);
        }
    }

    static Current most(Current one, Current other) {
        return one.compareTo(other) >= 0 ? one : other;
    }

    private void size(Job job, Sizing sizing) {
        Optional<ConductorSize> size = sizing.smallest(job, jobs);
        if (size.isEmpty() && job.size == null) {
            draft.refuse(
                    "no-size",
                    "No size of the family %s bears %s from %s to %s."
                            .formatted(
                                    draft.bench.settings().family(),
                                    job.needed,
                                    job.from.id(),
                                    job.to.id()));
        }
        job.size = size.orElse(job.size);
    }

    private void add(Job job, Sizing sizing) {
        ConductorSize size = job.size;
        if (size == null) {
            return;
        }
        String id = draft.ids.next("W");
        WireColour colour = colour(job);
        draft.amendments.add(
                new Amendment.AddWire(
                        draft.ids.next("A"),
                        draft.recipe.name() + ".",
                        new Wire(
                                id,
                                draft.recipe.circuit(),
                                colour,
                                size.designation(),
                                end(job.from, job, size),
                                end(job.to, job, size),
                                Condition.NEW)));
        tellSize(id, job, size, sizing.derated(size, jobs, job));
        tellColour(id, job, colour);
    }

    private WireEnd end(Place place, Job job, ConductorSize size) {
        String terminal = isInside(job.from, job.to) ? SOLDERED : terminals.at(place, size.metal());
        return new WireEnd(place.device().id(), place.point().name(), terminal);
    }

    private WireColour colour(Job job) {
        return WireColour.parse(
                job.part.colour().equals(WirePart.BY_SUPPLY)
                        ? FeedChoice.letter(protection.supplyAt(job.from))
                        : job.part.colour());
    }

    private void tellColour(String wire, Job job, WireColour colour) {
        boolean bySupply = job.part.colour().equals(WirePart.BY_SUPPLY);
        Provenance provenance =
                bySupply
                        ? draft.bench
                                .catalogue()
                                .findColour(colour.body())
                                .orElseThrow()
                                .provenance()
                        : job.part.colourProvenance();
        String text =
                bySupply
                        ? "%s, because it is fed by: %s."
                                .formatted(colour, protection.supplyAt(job.from).words())
                        : "%s, as the recipe has it (%s).".formatted(colour, provenance.inWords());
        draft.note(ThingKind.WIRE, wire, "colour", text, provenance);
    }

    private void tellSize(String wire, Job job, ConductorSize size, Derating derating) {
        @Nullable Current fuse = job.fuse;
        draft.note(
                ThingKind.WIRE,
                wire,
                "size",
                "%s: %s flow, %s; of its %s there are %s left in the bundle; %s long."
                        .formatted(
                                size.designation(),
                                job.load,
                                fuse == null
                                        ? "no fuse before it, to bear " + job.needed
                                        : "behind a fuse for " + fuse,
                                size.rating(),
                                derating.left(),
                                job.length),
                size.ratingProvenance());
    }
}
