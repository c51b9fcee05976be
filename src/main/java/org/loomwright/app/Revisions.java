package org.loomwright.app;

import org.loomwright.core.amendment.Amendment;
import org.loomwright.core.analysis.AnalysisSettings;
import org.loomwright.core.electrical.report.ElectricalReport;
import org.loomwright.core.electrical.report.ElectricalReports.Changes;
import org.loomwright.core.finding.AcceptedFinding;
import org.loomwright.core.finding.Finding;
import org.loomwright.core.finding.Outcome;
import org.loomwright.exchange.AcceptedJson;
import org.loomwright.exchange.AmendmentReader;
import org.loomwright.exchange.AnalysisWriter;
import org.loomwright.exchange.CanonicalJson;
import org.loomwright.exchange.ElectricalReportWriter;
import org.loomwright.exchange.RevisionWriter;
import org.loomwright.exchange.SettingsJson;
import org.loomwright.exchange.StrictJson;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import java.util.UUID;

/** Freezing specifications. A revision holds the loom, the amendments and every figure; its hash names it everywhere. */
@Service
public class Revisions {

    private final RevisionStore store;
    private final SpecificationStore specificationStore;
    private final Specifications specifications;
    private final LoomContents contents;
    private final Analyses analyses;
    private final Electrics electrics;
    private final TransactionTemplate transactions;
    private final Clock clock;

    Revisions(
            RevisionStore store,
            SpecificationStore specificationStore,
            Specifications specifications,
            LoomContents contents,
            Analyses analyses,
            Electrics electrics,
            TransactionTemplate transactions,
            Clock clock) {
        this.store = store;
        this.specificationStore = specificationStore;
        this.specifications = specifications;
        this.contents = contents;
        this.analyses = analyses;
        this.electrics = electrics;
        this.transactions = transactions;
        this.clock = clock;
    }

    /**
     * Freezes a specification as it stands. One that was frozen before and has not changed since gives the same revision again.
     *
     * @param specificationId of a specification
     * @param version the version that was seen when the decision was taken
     * @param by who freezes it
     * @return the revision
     * @throws NotFoundException if there is no such specification
     * @throws StaleVersionException if it was changed meanwhile
     */
    public StoredRevision freeze(UUID specificationId, long version, String by) {
        StoredSpecification specification = specifications.get(specificationId);
        checkVersion(specification, version);
        Analyses.Amended amended = specifications.compute(specification);
        CanonicalJson document = CanonicalJson.of(document(specification, amended));
        // Calculated before anything is locked; what was read must still stand when it is kept.
        return transactions.execute(
                status -> {
                    int number = store.nextNumber(specificationId);
                    checkVersion(specificationStore.get(specificationId), version);
                    return store.find(document.hash())
                            .orElseGet(
                                    () ->
                                            store.freeze(
                                                    frozen(
                                                            specification,
                                                            amended,
                                                            document,
                                                            number,
                                                            by)));
                });
    }

    private static void checkVersion(StoredSpecification specification, long version) {
        if (specification.version() != version) {
            throw new StaleVersionException(
                    "specification",
                    specification.id().toString(),
                    version,
                    specification.version());
        }
    }

    private ObjectNode document(StoredSpecification specification, Analyses.Amended amended) {
        return RevisionWriter.write(
                specification.id(),
                specification.draft().title(),
                amended.amendments(),
                amended.settings(),
                specifications.wishes(specification).accepted(),
                amended.analysis(),
                electrics.report(wired(amended), Changes.LEFT_OUT));
    }

    private RevisionStore.Frozen frozen(
            StoredSpecification specification,
            Analyses.Amended amended,
            CanonicalJson document,
            int number,
            String by) {
        return new RevisionStore.Frozen(
                document.hash(),
                specification.id(),
                number,
                specification.draft().stock(),
                Looms.content(amended.amended().loom().document()),
                document.text(),
                clock.instant(),
                by);
    }

    /**
     * @param hash of a revision
     * @return the revision
     * @throws NotFoundException if there is no such revision
     */
    @Transactional(readOnly = true)
    public StoredRevision get(String hash) {
        if (!CanonicalJson.isHash(hash)) {
            throw new NotFoundException("revision", hash);
        }
        return store.get(hash);
    }

    /**
     * @param specificationId of a specification
     * @return its revisions, newest first
     * @throws NotFoundException if there is no such specification
     */
    @Transactional(readOnly = true)
    public List<StoredRevision> listOf(UUID specificationId) {
        specificationStore.get(specificationId);
        return store.listOf(specificationId);
    }

    /**
     * Calculates a revision again for a drawing or a sheet, and makes sure that the figures are the frozen ones.
     *
     * @param revision a stored revision
     * @return the amended loom and what it means
     * @throws FiguresChangedException if the figures are not the frozen ones
     */
    @Transactional(readOnly = true)
    public Analyses.Amended compute(StoredRevision revision) {
        JsonNode document = readBack(StrictJson.parse(bytes(revision)));
        Analyses.Amended amended =
                again(revision, document)
                        .orElseThrow(r -> new FiguresChangedException(revision.hash()));
        if (!AnalysisWriter.haveSameFigures(
                analysis(document), AnalysisWriter.write(amended.analysis()))) {
            throw new FiguresChangedException(revision.hash());
        }
        return amended;
    }

    /**
     * Calculates the electrical side of a revision again and makes sure that the figures are the frozen ones.
     *
     * @param revision a stored revision
     * @param amended what {@link #compute} gave for it
     * @param changes whether to look for the cheapest changes, which are no part of the frozen figures
     * @return its electrical side
     * @throws FiguresChangedException if the figures are not the frozen ones
     */
    public ElectricalReport electrics(
            StoredRevision revision, Analyses.Amended amended, Changes changes) {
        ElectricalReport report = electrics.report(wired(amended), changes);
        JsonNode frozen = readBack(StrictJson.parse(bytes(revision))).get(RevisionWriter.ELECTRICS);
        if (!ElectricalReportWriter.haveSameFigures(frozen, ElectricalReportWriter.write(report))) {
            throw new FiguresChangedException(revision.hash());
        }
        return report;
    }

    /** @return the looms of a calculated revision, to be looked at from their electrical side */
    static WiredLoom wired(Analyses.Amended amended) {
        return new WiredLoom(
                amended.analysis().before().loom(), amended.amended(), amended.settings());
    }

    /** Rejected when a table has lost a row that the revision needs, or no longer takes an own figure. */
    private Outcome<Analyses.Amended> again(StoredRevision revision, JsonNode document) {
        List<Amendment> amendments = readBack(AmendmentReader.read(document.get("amendments"), ""));
        Outcome<AnalysisSettings> settings = SettingsJson.read(document.get("settings"), "");
        return settings.then(
                own ->
                        analyses.prove(contents.get(revision.stockHash()))
                                .then(stock -> analyses.amend(stock, amendments, own)));
    }

    /**
     * @param revision a stored revision
     * @return its figures as they were frozen
     */
    public JsonNode frozenAnalysis(StoredRevision revision) {
        return analysis(readBack(StrictJson.parse(bytes(revision))));
    }

    /**
     * @param revision a stored revision
     * @return the findings that the customer had accepted when it was frozen
     */
    public List<AcceptedFinding> accepted(StoredRevision revision) {
        JsonNode accepted =
                readBack(StrictJson.parse(bytes(revision))).get(RevisionWriter.ACCEPTED);
        return accepted == null ? List.of() : readBack(AcceptedJson.read(accepted, ""));
    }

    private static JsonNode analysis(JsonNode document) {
        return document.get(RevisionWriter.ANALYSIS);
    }

    private static byte[] bytes(StoredRevision revision) {
        return revision.document().getBytes(StandardCharsets.UTF_8);
    }

    private static <T> T readBack(Outcome<T> outcome) {
        return outcome.orElseThrow(Revisions::broken);
    }

    private static IllegalStateException broken(List<Finding> reasons) {
        return new IllegalStateException("a frozen revision does not hold any more: " + reasons);
    }
}
