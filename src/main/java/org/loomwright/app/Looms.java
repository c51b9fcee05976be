package org.loomwright.app;

import org.jspecify.annotations.Nullable;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.core.finding.Outcome;
import org.loomwright.core.loom.LoomDocument;
import org.loomwright.exchange.CanonicalJson;
import org.loomwright.exchange.LoomWriter;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import java.time.Clock;
import java.util.UUID;

/** Recording stock looms. */
@Service
public class Looms {

    private final LoomStore store;
    private final LoomContents contents;
    private final Analyses analyses;
    private final OnceOnly onceOnly;
    private final Clock clock;
    private final IdSource ids;

    Looms(
            LoomStore store,
            LoomContents contents,
            Analyses analyses,
            OnceOnly onceOnly,
            Clock clock,
            IdSource ids) {
        this.store = store;
        this.contents = contents;
        this.analyses = analyses;
        this.onceOnly = onceOnly;
        this.clock = clock;
        this.ids = ids;
    }

    /**
     * @param document what was recorded
     * @param request marks the request
     * @return the stored loom, or every fault of the document
     */
    public Outcome<StoredLoom> record(LoomDocument document, Request request) {
        Outcome<LoomContent> content = contentOf(document);
        return onceOnly.run(
                "record-loom",
                request,
                () ->
                        content.map(
                                proven ->
                                        store.create(
                                                ids.next(),
                                                document.name(),
                                                proven,
                                                clock.instant())),
                StoredLoom::id,
                store::get);
    }

    /**
     * @param id of a loom
     * @param version the version that the change was made from
     * @param document what it is from now on
     * @return the changed loom, or every fault of the document
     * @throws NotFoundException if there is no such loom
     * @throws StaleVersionException if it was changed meanwhile
     */
    @Transactional
    public Outcome<StoredLoom> change(UUID id, long version, LoomDocument document) {
        return contentOf(document)
                .map(
                        content ->
                                store.change(
                                        id, version, document.name(), content, clock.instant()));
    }

    /**
     * @param id of a loom
     * @return the loom
     * @throws NotFoundException if there is no such loom
     */
    @Transactional(readOnly = true)
    public StoredLoom get(UUID id) {
        return store.get(id);
    }

    /**
     * @param hash a content hash
     * @return the document that it names, whether a loom still has it or not
     * @throws NotFoundException if nothing has that hash
     */
    @Transactional(readOnly = true)
    public LoomDocument getContent(String hash) {
        if (!CanonicalJson.isHash(hash)) {
            throw new NotFoundException("content", hash);
        }
        return contents.get(hash);
    }

    /** @return looms, newest first */
    @Transactional(readOnly = true)
    public Page<LoomSummary> list(@Nullable PageKey after, int size) {
        return store.list(after, size);
    }

    /** @return looms that have a wire of this colour, newest first */
    @Transactional(readOnly = true)
    public Page<LoomSummary> listHavingColour(
            WireColour colour, @Nullable PageKey after, int size) {
        return store.listHavingColour(colour, after, size);
    }

    /** @return looms that have a wire of this conductor size, newest first */
    @Transactional(readOnly = true)
    public Page<LoomSummary> listHavingSize(String wireSize, @Nullable PageKey after, int size) {
        return store.listHavingSize(wireSize, after, size);
    }

    private Outcome<LoomContent> contentOf(LoomDocument document) {
        return analyses.prove(document).map(loom -> content(loom.document()));
    }

    /** Names a proven document by the hash of its canonical form. */
    static LoomContent content(LoomDocument proven) {
        return new LoomContent(CanonicalJson.of(LoomWriter.write(proven)).hash(), proven);
    }
}
