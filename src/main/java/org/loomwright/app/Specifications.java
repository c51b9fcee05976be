package org.loomwright.app;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.analysis.AnalysisSettings;
import org.loomwright.core.finding.AcceptedFinding;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.finding.Subject;
import org.loomwright.core.finding.ThingKind;
import org.loomwright.exchange.AcceptedJson;
import org.loomwright.exchange.AmendmentReader;
import org.loomwright.exchange.AmendmentWriter;
import org.loomwright.exchange.CanonicalJson;
import org.loomwright.exchange.SettingsJson;
import org.loomwright.exchange.StrictJson;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import java.util.UUID;

/** Saying what is to be changed in a loom. A specification keeps the stock loom as it was when the specification was begun. */
@Service
public class Specifications {

    private final SpecificationStore store;
    private final LoomStore looms;
    private final Analyses analyses;
    private final OnceOnly onceOnly;
    private final Clock clock;
    private final IdSource ids;

    Specifications(
            SpecificationStore store,
            LoomStore looms,
            Analyses analyses,
            OnceOnly onceOnly,
            Clock clock,
            IdSource ids) {
        this.store = store;
        this.looms = looms;
        this.analyses = analyses;
        this.onceOnly = onceOnly;
        this.clock = clock;
        this.ids = ids;
    }

    /**
     * What a specification says, apart from its stock loom.
     *
     * @param title what it is called
     * @param amendments what is to be changed, in order
     * @param settings what to calculate with
     * @param accepted findings that the customer takes as they are
     */
    public record Wishes(
            String title,
            List<Amendment> amendments,
            AnalysisSettings settings,
            List<AcceptedFinding> accepted) {

        public Wishes {
            amendments = List.copyOf(amendments);
            accepted = List.copyOf(accepted);
        }
    }

    /**
     * @param loomId the loom to start from, as it stands now
     * @param wishes what is to be changed
     * @param request marks the request
     * @return the stored specification, or all reasons why not: no such loom, amendments that cannot be applied
     */
    public Outcome<StoredSpecification> begin(UUID loomId, Wishes wishes, Request request) {
        return onceOnly.run(
                "begin-specification",
                request,
                () ->
                        looms.find(loomId)
                                .map(loom -> beginFrom(loom, wishes))
                                .orElseGet(() -> noLoom(loomId)),
                StoredSpecification::id,
                store::get);
    }

    private Outcome<StoredSpecification> beginFrom(StoredLoom loom, Wishes wishes) {
        LoomContent stock = new LoomContent(loom.contentHash(), loom.document());
        return draft(stock, wishes)
                .map(draft -> store.create(ids.next(), loom.id(), draft, clock.instant()));
    }

    private static Outcome<StoredSpecification> noLoom(UUID loomId) {
        return Outcome.rejected(
                List.of(
                        Finding.fault(
                                "specification.loom-unknown",
                                new Subject(ThingKind.LOOM, loomId.toString(), "/loomId"),
                                "There is no loom %s; record it first.".formatted(loomId))));
    }

    /**
     * @param id of a specification
     * @param version the version that the change was made from
     * @param wishes what is to be changed from now on
     * @return the changed specification, or all reasons why the amendments cannot be applied
     * @throws NotFoundException if there is no such specification
     * @throws StaleVersionException if it was changed meanwhile
     */
    @Transactional
    public Outcome<StoredSpecification> change(UUID id, long version, Wishes wishes) {
        StoredSpecification before = store.get(id);
        return draft(before.draft().stock(), wishes)
                .map(draft -> store.change(id, version, draft, clock.instant()));
    }

    /**
     * @param id of a specification
     * @return the specification
     * @throws NotFoundException if there is no such specification
     */
    @Transactional(readOnly = true)
    public StoredSpecification get(UUID id) {
        return store.get(id);
    }

    /** @return specifications, newest first */
    @Transactional(readOnly = true)
    public Page<SpecificationStore.Summary> list(@Nullable PageKey after, int size) {
        return store.list(after, size);
    }

    /**
     * @param specification a stored specification
     * @return what it says, read back
     */
    public Wishes wishes(StoredSpecification specification) {
        SpecificationDraft draft = specification.draft();
        return new Wishes(
                draft.title(),
                readBack(
                        StrictJson.parse(bytes(draft.amendmentsJson()))
                                .then(json -> AmendmentReader.read(json, ""))),
                readBack(
                        StrictJson.parse(bytes(draft.settingsJson()))
                                .then(json -> SettingsJson.read(json, ""))),
                readBack(
                        StrictJson.parse(bytes(draft.acceptedJson()))
                                .then(json -> AcceptedJson.read(json, ""))));
    }

    /**
     * @param specification a stored specification
     * @return the amended loom and what it means
     */
    public Analyses.Amended compute(StoredSpecification specification) {
        Wishes wishes = wishes(specification);
        return readBack(
                analyses.amend(
                        analyses.proven(specification.draft().stock().document()),
                        wishes.amendments(),
                        wishes.settings()));
    }

    private Outcome<SpecificationDraft> draft(LoomContent stock, Wishes wishes) {
        return analyses.prove(stock.document())
                .then(loom -> analyses.apply(loom, wishes.amendments()))
                .map(
                        amended ->
                                new SpecificationDraft(
                                        wishes.title(),
                                        stock,
                                        CanonicalJson.of(AmendmentWriter.write(wishes.amendments()))
                                                .text(),
                                        CanonicalJson.of(SettingsJson.write(wishes.settings()))
                                                .text(),
                                        CanonicalJson.of(AcceptedJson.write(wishes.accepted()))
                                                .text()));
    }

    private static byte[] bytes(String json) {
        return json.getBytes(StandardCharsets.UTF_8);
    }

    /** What was accepted when it was stored has to be accepted when it is read back. */
    private static <T> T readBack(Outcome<T> outcome) {
        return outcome.orElseThrow(Specifications::broken);
    }

    private static IllegalStateException broken(List<Finding> reasons) {
        return new IllegalStateException(
                "a stored specification does not hold any more: " + reasons);
    }
}
