package org.loomwright.store;

import jakarta.persistence.EntityManager;

import org.jspecify.annotations.Nullable;
import org.loomwright.app.LoomContent;
import org.loomwright.app.NotFoundException;
import org.loomwright.app.Page;
import org.loomwright.app.PageKey;
import org.loomwright.app.SpecificationDraft;
import org.loomwright.app.SpecificationStore;
import org.loomwright.app.StoredSpecification;
import org.loomwright.store.content.ContentTables;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.UUID;

/** Specifications: the head as an entity, the stock loom in the content tables. */
@Component
class JpaSpecificationStore implements SpecificationStore {

    static final String THING = "specification";

    private final EntityManager entities;
    private final SpecificationRepository specifications;
    private final ContentTables contents;
    private final JdbcClient jdbc;

    JpaSpecificationStore(
            EntityManager entities,
            SpecificationRepository specifications,
            ContentTables contents,
            JdbcClient jdbc) {
        this.entities = entities;
        this.specifications = specifications;
        this.contents = contents;
        this.jdbc = jdbc;
    }

    @Override
    public StoredSpecification create(
            UUID id, @Nullable UUID loomId, SpecificationDraft draft, Instant at) {
        SpecificationEntity specification =
                new SpecificationEntity(
                        id, loomId, draft, contents.keep(draft.stock()), PageStart.kept(at));
        entities.persist(specification);
        entities.flush();
        return stored(specification, draft.stock());
    }

    @Override
    public StoredSpecification change(UUID id, long version, SpecificationDraft draft, Instant at) {
        int rows =
                specifications.change(
                        id,
                        version,
                        draft.title(),
                        contents.keep(draft.stock()),
                        draft.amendmentsJson(),
                        draft.settingsJson(),
                        draft.acceptedJson(),
                        PageStart.kept(at));
        Optional<SpecificationEntity> specification = specifications.findById(id);
        ChangedRows.judge(
                rows, THING, id, version, specification.map(SpecificationEntity::version));
        return stored(specification.orElseThrow(), draft.stock());
    }

    @Override
    public Optional<StoredSpecification> find(UUID id) {
        return specifications
                .findById(id)
                .map(found -> stored(found, contents.load(found.stockContentId())));
    }

    @Override
    public StoredSpecification get(UUID id) {
        return find(id).orElseThrow(() -> new NotFoundException(THING, id.toString()));
    }

    @Override
    public Page<Summary> list(@Nullable PageKey after, int size) {
        PageKey start = PageStart.of(after);
        return Page.of(
                jdbc.sql(
                                """
                                select head.id, head.title, head.loom_id, content.content_hash,
                                    (select count(*) from revision
                                     where revision.specification_id = head.id) as revisions,
                                    head.version, head.created_at, head.updated_at
                                from specification head
                                join loom_content content
                                    on content.content_id = head.stock_content_id
                                where (head.created_at, head.id) < (?, ?)
                                order by head.created_at desc, head.id desc
                                limit ?
                                """)
                        .param(PageStart.parameter(start.createdAt()))
                        .param(start.id())
                        .param(Page.checkSize(size) + 1)
                        .query((row, number) -> summary(row))
                        .list(),
                size,
                Summary::key);
    }

    private static Summary summary(ResultSet row) throws SQLException {
        return new Summary(
                row.getObject("id", UUID.class),
                row.getString("title"),
                row.getObject("loom_id", UUID.class),
                row.getString("content_hash"),
                row.getInt("revisions"),
                row.getLong("version"),
                row.getObject("created_at", OffsetDateTime.class).toInstant(),
                row.getObject("updated_at", OffsetDateTime.class).toInstant());
    }

    private static StoredSpecification stored(SpecificationEntity head, LoomContent stock) {
        SpecificationDraft draft =
                new SpecificationDraft(
                        head.title(),
                        new LoomContent(stock.hash(), stock.document().ordered()),
                        head.amendmentsJson(),
                        head.settingsJson(),
                        head.acceptedJson());
        return new StoredSpecification(
                head.id(),
                head.loomId(),
                draft,
                head.version(),
                head.createdAt(),
                head.updatedAt());
    }
}
