package org.loomwright.api;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.tags.Tag;

import jakarta.servlet.http.HttpServletRequest;

import org.jspecify.annotations.Nullable;
import org.loomwright.app.JobSheets;
import org.loomwright.app.StoredWorkOrder;
import org.loomwright.app.WorkOrders;
import org.loomwright.core.workorder.Move;
import org.loomwright.core.workorder.WorkOrderStatus;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

import java.io.IOException;
import java.net.URI;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** Work orders and their moves. */
@RestController
@Tag(name = "Work orders", description = "Jobs on a frozen revision, with their moves")
@RequestMapping(path = "/api/work-orders", produces = MediaType.APPLICATION_JSON_VALUE)
class WorkOrderController {

    private final WorkOrders workOrders;
    private final JobSheets jobSheets;
    private final BodyReader bodies;

    WorkOrderController(WorkOrders workOrders, JobSheets jobSheets, BodyReader bodies) {
        this.workOrders = workOrders;
        this.jobSheets = jobSheets;
        this.bodies = bodies;
    }

    /** A work order as it is answered. */
    @Schema(name = "WorkOrder")
    record WorkOrderAnswer(
            UUID id,
            long version,
            String number,
            String revisionHash,
            String customer,
            String workshop,
            @Schema(
                            types = {OpenApiSchemas.TEXT, OpenApiSchemas.NULL},
                            format = "date")
                    @Nullable LocalDate dueDate,
            String notes,
            String status,
            List<String> allowedMoves,
            Instant createdAt) {

        static WorkOrderAnswer of(StoredWorkOrder order) {
            return new WorkOrderAnswer(
                    order.id(),
                    order.version(),
                    order.number(),
                    order.revisionHash(),
                    order.customer(),
                    order.workshop(),
                    order.dueDate(),
                    order.notes(),
                    StatusWords.of(order.status()),
                    order.status().next().stream().map(StatusWords::of).toList(),
                    order.createdAt());
        }
    }

    /** A move as it is answered. */
    @Schema(name = "Move")
    record MoveAnswer(
            @Schema(types = {OpenApiSchemas.TEXT, OpenApiSchemas.NULL}) @Nullable String from,
            String to,
            String by,
            String reason,
            Instant at) {

        static MoveAnswer of(Move move) {
            WorkOrderStatus from = move.from();
            return new MoveAnswer(
                    from == null ? null : StatusWords.of(from),
                    StatusWords.of(move.to()),
                    move.by(),
                    move.reason(),
                    move.at());
        }
    }

    private static ResponseEntity.BodyBuilder tagged(
            ResponseEntity.BodyBuilder builder, StoredWorkOrder order) {
        return builder.eTag(EntityTags.of(order.version()));
    }

    @Operation(operationId = "openWorkOrder", summary = "Open a work order on a frozen revision")
    @RequestBody(
            required = true,
            content = @Content(schema = @Schema(ref = OpenApiSchemas.NEW_WORK_ORDER)))
    @ResponseStatus(HttpStatus.CREATED)
    @PostMapping(consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<WorkOrderAnswer> open(
            HttpServletRequest request,
            @RequestHeader(name = "Idempotency-Key", required = false) @Nullable String key)
            throws IOException {
        BodyReader.Body body = bodies.read(request);
        WorkOrderBody read = InvalidRequestException.orThrow(WorkOrderBody.read(body.json()));
        StoredWorkOrder order =
                InvalidRequestException.orThrow(
                        workOrders.open(read.terms(), read.by(), body.request()));
        URI location = URI.create("/api/work-orders/" + order.id());
        return tagged(ResponseEntity.created(location), order).body(WorkOrderAnswer.of(order));
    }

    @Operation(operationId = "listWorkOrders", summary = "List work orders, newest first")
    @GetMapping
    PageRequest.Listed<WorkOrderAnswer> list(
            @RequestParam(required = false) @Nullable String status,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "50") int size) {
        PageRequest page = PageRequest.of(after, size);
        return PageRequest.listed(
                workOrders.list(parse(status), page.after(), page.size()), WorkOrderAnswer::of);
    }

    private static @Nullable WorkOrderStatus parse(@Nullable String status) {
        return status == null
                ? null
                : StatusWords.find(status)
                        .orElseThrow(
                                () ->
                                        InvalidRequestException.of(
                                                "work-order.status-unknown",
                                                "There is no status '%s'.".formatted(status)));
    }

    @Operation(operationId = "readWorkOrder", summary = "Read a work order")
    @GetMapping("/{id}")
    ResponseEntity<WorkOrderAnswer> get(@PathVariable UUID id) {
        StoredWorkOrder order = workOrders.get(id);
        return tagged(ResponseEntity.ok(), order).body(WorkOrderAnswer.of(order));
    }

    @Operation(
            operationId = "listMoves",
            summary = "List every move of a work order, the first one first")
    @GetMapping("/{id}/moves")
    List<MoveAnswer> moves(@PathVariable UUID id) {
        return workOrders.moves(id).stream().map(MoveAnswer::of).toList();
    }

    @Operation(
            operationId = "moveWorkOrder",
            summary = "Move a work order on",
            description = "Where it may go is in 'allowedMoves'; some moves need a reason.")
    @RequestBody(
            required = true,
            content = @Content(schema = @Schema(ref = OpenApiSchemas.NEW_MOVE)))
    @PostMapping(path = "/{id}/moves", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<WorkOrderAnswer> move(
            @PathVariable UUID id,
            @Parameter(required = true) @RequestHeader(name = "If-Match", required = false)
                    @Nullable String ifMatch,
            HttpServletRequest request)
            throws IOException {
        long version = EntityTags.version(ifMatch);
        WorkOrderBody.MoveBody move =
                InvalidRequestException.orThrow(
                        WorkOrderBody.readMove(bodies.read(request).json()));
        StoredWorkOrder order =
                InvalidRequestException.orThrow(
                        workOrders.move(id, version, move.to(), move.by(), move.reason()));
        return tagged(ResponseEntity.ok(), order).body(WorkOrderAnswer.of(order));
    }

    @Operation(operationId = "printJobSheet", summary = "Print the job sheet of a work order")
    @GetMapping(path = "/{id}/job-sheet.pdf", produces = MediaType.APPLICATION_PDF_VALUE)
    ResponseEntity<byte[]> jobSheet(@PathVariable UUID id) {
        JobSheets.Sheet sheet = jobSheets.make(id);
        return Files.pdf(sheet.pdf(), sheet.workOrder().number() + "-job-sheet.pdf");
    }
}
