package org.loomwright.store;

import jakarta.persistence.EntityManager;

import org.jspecify.annotations.Nullable;
import org.loomwright.app.LoomContent;
import org.loomwright.app.LoomStore;
import org.loomwright.app.LoomSummary;
import org.loomwright.app.NotFoundException;
import org.loomwright.app.Page;
import org.loomwright.app.PageKey;
import org.loomwright.app.StoredLoom;
import org.loomwright.core.catalogue.WireColour;
import org.loomwright.store.content.ContentTables;
import org.springframework.stereotype.Component;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** Looms: the head as an entity, the content in its own tables. */
@Component
class JpaLoomStore implements LoomStore {

    private static final String THING = "loom";

    private final EntityManager entities;
    private final LoomRepository looms;
    private final ContentTables contents;
    private final LoomLists lists;

    JpaLoomStore(
            EntityManager entities, LoomRepository looms, ContentTables contents, LoomLists lists) {
        this.entities = entities;
        this.looms = looms;
        this.contents = contents;
        this.lists = lists;
    }

    @Override
    public StoredLoom create(UUID id, String name, LoomContent content, Instant at) {
        LoomEntity loom = new LoomEntity(id, name, contents.keep(content), PageStart.kept(at));
        entities.persist(loom);
        entities.flush();
        return stored(loom, content);
    }

    @Override
    public StoredLoom change(UUID id, long version, String name, LoomContent content, Instant at) {
        int rows = looms.change(id, version, name, contents.keep(content), PageStart.kept(at));
        Optional<LoomEntity> loom = looms.findById(id);
        ChangedRows.judge(rows, THING, id, version, loom.map(LoomEntity::version));
        return stored(loom.orElseThrow(), content);
    }

    @Override
    public Optional<StoredLoom> find(UUID id) {
        return looms.findById(id).map(loom -> stored(loom, contents.load(loom.contentId())));
    }

    @Override
    public StoredLoom get(UUID id) {
        return find(id).orElseThrow(() -> new NotFoundException(THING, id.toString()));
    }

    @Override
    public Page<LoomSummary> list(@Nullable PageKey after, int size) {
        return lists.all(after, size);
    }

    @Override
    public Page<LoomSummary> listHavingColour(
            WireColour colour, @Nullable PageKey after, int size) {
        return lists.havingColour(colour, after, size);
    }

    @Override
    public Page<LoomSummary> listHavingSize(String wireSize, @Nullable PageKey after, int size) {
        return lists.havingSize(wireSize, after, size);
    }

    private static StoredLoom stored(LoomEntity loom, LoomContent content) {
        return new StoredLoom(
                loom.id(),
                loom.name(),
                content.hash(),
                content.document().ordered(),
                loom.version(),
                loom.createdAt(),
                loom.updatedAt());
    }
}
