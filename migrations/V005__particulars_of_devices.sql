-- What else is known about a device: what it serves, its rating and voltage, the earth that it needs and the fuses fitted in it; how
-- many wire ends a point takes; when a terminal is fitted. Nobody has to say any of it, and content that is there says none of it.

alter table device
    add column serves text collate "C" check (char_length(serves) between 1 and 40),
    add column rating_ma bigint check (rating_ma > 0),
    add column voltage_mv integer check (voltage_mv > 0),
    add column needs_earth text collate "C" check (needs_earth in ('positive', 'negative'));

alter table device_point
    add column takes smallint check (takes between 1 and 50);

alter table wire
    add column a_fitted text collate "C" check (a_fitted in ('before-covering', 'after-covering', 'either')),
    add column b_fitted text collate "C" check (b_fitted in ('before-covering', 'after-covering', 'either'));

create table device_fuse (
    content_id bigint not null,
    device_id text collate "C" not null,
    from_point text collate "C" not null,
    to_point text collate "C" not null,
    style text collate "C" not null check (style ~ '^[a-z]+(-[a-z]+)*$'),
    marked_ma bigint not null check (marked_ma between 1 and 500000),
    primary key (content_id, device_id, from_point, to_point),
    foreign key (content_id, device_id, from_point) references device_point (content_id, device_id, point_name),
    foreign key (content_id, device_id, to_point) references device_point (content_id, device_id, point_name),
    constraint fuse_has_two_ends check (from_point <> to_point)
);

create trigger only_with_its_content after insert on device_fuse referencing new table as added
    for each statement execute function refuse_parts_for_old_content();
create trigger written_once before update or delete or truncate on device_fuse
    for each statement execute function refuse_change();

grant select, insert on device_fuse to "${appRole}";
