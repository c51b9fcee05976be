-- What people work on. A loom and a specification are heads: they change, and every change carries the version that it was made
-- from. A revision never changes; a work order pins one by its hash and only its status moves, each move with an event.

create table loom (
    id uuid primary key,
    name text not null check (char_length(name) between 1 and 300),
    content_id bigint not null references loom_content,
    version bigint not null check (version >= 1),
    created_at timestamptz not null,
    updated_at timestamptz not null
);
create index loom_by_age on loom (created_at, id);
create index loom_by_content on loom (content_id);

create table specification (
    id uuid primary key,
    title text not null check (char_length(title) between 1 and 300),
    stock_content_id bigint not null references loom_content,
    loom_id uuid references loom,
    amendments_json text not null check (amendments_json is json array with unique keys),
    settings_json text not null check (settings_json is json object with unique keys),
    version bigint not null check (version >= 1),
    created_at timestamptz not null,
    updated_at timestamptz not null
);
create index specification_by_age on specification (created_at, id);
create index specification_by_loom on specification (loom_id);

create table revision (
    hash char(64) collate "C" primary key check (hash ~ '^[0-9a-f]{64}$'),
    specification_id uuid not null references specification,
    number integer not null check (number >= 1),
    stock_content_id bigint not null references loom_content,
    amended_content_id bigint not null references loom_content,
    document text not null check (document is json object with unique keys),
    frozen_at timestamptz not null,
    frozen_by text not null check (char_length(frozen_by) between 1 and 300),
    unique (specification_id, number)
);

create table work_order_counter (
    year smallint primary key check (year between 2000 and 9999),
    last_number integer not null check (last_number >= 1)
);

create table work_order_status (
    status text collate "C" primary key
);
insert into work_order_status (status) values
    ('enquiry'), ('quoted'), ('accepted'), ('awaiting-loom'), ('loom-received'), ('at-hold-point'), ('in-work'),
    ('on-hold'), ('testing'), ('ready'), ('dispatched'), ('closed'), ('declined'), ('cancelled');

-- The same table as in WorkOrderStatus; a test compares the two. No event can be written that is not an allowed move.
create table work_order_move (
    from_status text collate "C" not null references work_order_status,
    to_status text collate "C" not null references work_order_status,
    primary key (from_status, to_status)
);
insert into work_order_move (from_status, to_status) values
    ('enquiry', 'quoted'), ('enquiry', 'declined'),
    ('quoted', 'accepted'), ('quoted', 'declined'),
    ('accepted', 'awaiting-loom'), ('accepted', 'loom-received'), ('accepted', 'on-hold'), ('accepted', 'cancelled'),
    ('awaiting-loom', 'loom-received'), ('awaiting-loom', 'on-hold'), ('awaiting-loom', 'cancelled'),
    ('loom-received', 'in-work'), ('loom-received', 'on-hold'), ('loom-received', 'cancelled'),
    ('in-work', 'at-hold-point'), ('in-work', 'testing'), ('in-work', 'on-hold'), ('in-work', 'cancelled'),
    ('at-hold-point', 'in-work'), ('at-hold-point', 'on-hold'), ('at-hold-point', 'cancelled'),
    ('on-hold', 'awaiting-loom'), ('on-hold', 'loom-received'), ('on-hold', 'at-hold-point'), ('on-hold', 'in-work'), ('on-hold', 'testing'), ('on-hold', 'cancelled'),
    ('testing', 'ready'), ('testing', 'in-work'), ('testing', 'on-hold'),
    ('ready', 'dispatched'), ('ready', 'testing'),
    ('dispatched', 'closed');

create table work_order (
    id uuid primary key,
    number text collate "C" not null unique check (number ~ '^WO-[0-9]{4}-[0-9]{4,}$'),
    revision_hash char(64) collate "C" not null references revision,
    customer text not null check (char_length(customer) between 1 and 300),
    workshop text not null check (char_length(workshop) between 1 and 300),
    due_date date,
    notes text not null check (char_length(notes) <= 10000),
    status text collate "C" not null references work_order_status,
    version bigint not null check (version >= 1),
    created_at timestamptz not null
);
create index work_order_by_age on work_order (created_at, id);
create index work_order_by_status on work_order (status, created_at, id);
create index work_order_by_revision on work_order (revision_hash);

create table work_order_event (
    work_order_id uuid not null references work_order,
    sequence bigint not null check (sequence >= 1),
    from_status text collate "C" references work_order_status,
    to_status text collate "C" not null references work_order_status,
    by_whom text not null check (char_length(by_whom) between 1 and 300),
    reason text not null check (char_length(reason) <= 2000),
    happened_at timestamptz not null,
    primary key (work_order_id, sequence),
    constraint only_allowed_moves foreign key (from_status, to_status) references work_order_move,
    constraint only_the_first_event_comes_from_nowhere check ((sequence = 1) = (from_status is null))
);

create table idempotency_key (
    operation text collate "C" not null,
    key text collate "C" not null check (char_length(key) between 1 and 200),
    request_hash char(64) collate "C" not null check (request_hash ~ '^[0-9a-f]{64}$'),
    resource_id text not null,
    created_at timestamptz not null,
    primary key (operation, key)
);
