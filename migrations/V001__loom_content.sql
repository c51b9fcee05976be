-- What looms consist of. Content is written once, in one transaction, and shared by everything that names its hash: a loom's
-- present state, a specification's stock loom, a frozen revision. Lengths are whole micrometres, currents milliamperes, voltages
-- millivolts. Local ids are plain ASCII; collation "C" keeps them in the same order as the program does.

create table loom_content (
    content_id bigint generated always as identity primary key,
    content_hash char(64) collate "C" not null unique check (content_hash ~ '^[0-9a-f]{64}$'),
    format_version smallint not null check (format_version >= 1),
    name text not null check (char_length(name) between 1 and 300),
    datum text collate "C" not null,
    vehicle_name text not null check (char_length(vehicle_name) between 1 and 300),
    vehicle_year smallint not null check (vehicle_year between 1885 and 2100),
    hand text not null check (hand in ('right', 'left')),
    earth text not null check (earth in ('positive', 'negative')),
    system_voltage_mv integer not null check (system_voltage_mv > 0),
    made_in xid8 not null,
    created_at timestamptz not null
);
comment on column loom_content.made_in is 'the transaction that wrote it, the only one that may add parts';

create table vehicle_remark (
    content_id bigint not null references loom_content,
    position smallint not null check (position >= 0),
    remark text not null check (char_length(remark) between 1 and 300),
    primary key (content_id, position)
);

create table node (
    content_id bigint not null references loom_content,
    node_id text collate "C" not null check (char_length(node_id) between 1 and 40),
    name text not null check (char_length(name) between 1 and 300),
    primary key (content_id, node_id)
);

alter table loom_content
    add constraint loom_content_datum_is_a_node
    foreign key (content_id, datum) references node (content_id, node_id) deferrable initially deferred;

create table segment (
    content_id bigint not null references loom_content,
    segment_id text collate "C" not null check (char_length(segment_id) between 1 and 40),
    from_node text collate "C" not null,
    to_node text collate "C" not null,
    length_um bigint not null check (length_um > 0),
    leaves_clock smallint check (leaves_clock between 1 and 12),
    leaves_angle_degrees smallint check (leaves_angle_degrees between 0 and 180),
    bend_degrees smallint not null check (bend_degrees >= 0),
    covering text collate "C" not null,
    base_yarn text collate "C",
    picks_per_25mm smallint check (picks_per_25mm >= 0),
    lacquer_coats smallint not null check (lacquer_coats >= 0),
    evidence_kind text not null
        check (evidence_kind in ('measured', 'under-cover', 'photograph', 'second-loom', 'assumed')),
    evidence_note text not null check (char_length(evidence_note) <= 300),
    primary key (content_id, segment_id),
    foreign key (content_id, from_node) references node (content_id, node_id),
    foreign key (content_id, to_node) references node (content_id, node_id),
    constraint segment_goes_somewhere check (from_node <> to_node),
    -- Node first: an index that began with the content would rival the primary key when foreign keys are checked, and a planner
    -- without statistics might choose it.
    constraint node_is_reached_once unique (to_node, content_id),
    constraint departure_is_whole check ((leaves_clock is null) = (leaves_angle_degrees is null))
);

create table segment_tracer (
    content_id bigint not null,
    segment_id text collate "C" not null,
    position smallint not null check (position >= 0),
    yarn text collate "C" not null,
    primary key (content_id, segment_id, position),
    foreign key (content_id, segment_id) references segment (content_id, segment_id)
);

create table segment_reading (
    content_id bigint not null,
    segment_id text collate "C" not null,
    position smallint not null check (position >= 0),
    length_um bigint not null check (length_um > 0),
    primary key (content_id, segment_id, position),
    foreign key (content_id, segment_id) references segment (content_id, segment_id)
);

create table opening (
    content_id bigint not null,
    opening_id text collate "C" not null check (char_length(opening_id) between 1 and 40),
    segment_id text collate "C" not null,
    name text not null check (char_length(name) between 1 and 300),
    kind text not null check (kind in ('grommet', 'hole', 'tube', 'clip')),
    position_um bigint not null check (position_um >= 0),
    clear_diameter_um bigint not null check (clear_diameter_um > 0),
    passes text not null check (passes in ('away-from-datum', 'towards-datum', 'either', 'opens')),
    primary key (content_id, opening_id),
    foreign key (content_id, segment_id) references segment (content_id, segment_id)
);

create table device (
    content_id bigint not null references loom_content,
    device_id text collate "C" not null check (char_length(device_id) between 1 and 40),
    name text not null check (char_length(name) between 1 and 300),
    kind text collate "C" not null check (kind ~ '^[a-z]+(-[a-z]+)*$'),
    load_ma bigint check (load_ma >= 0),
    primary key (content_id, device_id)
);

create table device_point (
    content_id bigint not null,
    device_id text collate "C" not null,
    point_name text collate "C" not null check (char_length(point_name) between 1 and 40),
    node_id text collate "C" not null,
    tail_um bigint not null check (tail_um >= 0),
    primary key (content_id, device_id, point_name),
    foreign key (content_id, device_id) references device (content_id, device_id),
    foreign key (content_id, node_id) references node (content_id, node_id)
);

create table wire (
    content_id bigint not null references loom_content,
    wire_id text collate "C" not null check (char_length(wire_id) between 1 and 40),
    circuit text not null check (char_length(circuit) between 1 and 300),
    body text collate "C" not null,
    tracer text collate "C",
    size text collate "C" not null,
    a_device text collate "C" not null,
    a_point text collate "C" not null,
    a_terminal text collate "C" not null,
    b_device text collate "C" not null,
    b_point text collate "C" not null,
    b_terminal text collate "C" not null,
    condition text not null
        check (condition in ('good', 'faded', 'brittle', 'damaged', 'repaired', 'missing', 'unknown', 'new')),
    primary key (content_id, wire_id),
    foreign key (content_id, a_device, a_point) references device_point (content_id, device_id, point_name),
    foreign key (content_id, b_device, b_point) references device_point (content_id, device_id, point_name),
    constraint wire_has_two_ends check ((a_device, a_point) <> (b_device, b_point))
);
create index wire_by_colour on wire (body, tracer, content_id);
create index wire_by_size on wire (size, content_id);

create table end_to_end_check (
    content_id bigint not null references loom_content,
    check_id text collate "C" not null check (char_length(check_id) between 1 and 40),
    from_node text collate "C" not null,
    to_node text collate "C" not null,
    measured_um bigint not null check (measured_um > 0),
    primary key (content_id, check_id),
    foreign key (content_id, from_node) references node (content_id, node_id),
    foreign key (content_id, to_node) references node (content_id, node_id),
    constraint check_goes_somewhere check (from_node <> to_node)
);
