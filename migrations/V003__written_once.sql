-- What a work order pins is written once. The application's role has no right to change it (next script); these triggers hold
-- against everybody else, the owner included. Each function fixes its search path, so that no temporary table can stand in.

create function refuse_change() returns trigger
    language plpgsql
    set search_path = pg_catalog, public, pg_temp
as $$
begin
    raise exception '% is written once: % refused', tg_table_name, tg_op
        using errcode = 'restrict_violation';
end;
$$;

create function stamp_content() returns trigger
    language plpgsql
    set search_path = pg_catalog, public, pg_temp
as $$
begin
    new.made_in := pg_current_xact_id();
    new.created_at := transaction_timestamp();
    return new;
end;
$$;

-- The time is compared too: in a database restored from a dump, transaction numbers start again.
create function refuse_parts_for_old_content() returns trigger
    language plpgsql
    set search_path = pg_catalog, public, pg_temp
as $$
begin
    if exists (
        select from added
        join public.loom_content content using (content_id)
        where content.made_in <> pg_current_xact_id()
            or content.created_at <> transaction_timestamp()
    ) then
        raise exception '% may be added to a content only by the transaction that wrote it', tg_table_name
            using errcode = 'restrict_violation';
    end if;
    return null;
end;
$$;

create trigger stamp_content before insert on loom_content
    for each row execute function stamp_content();

do $$
declare
    part text;
begin
    foreach part in array array[
        'vehicle_remark', 'node', 'segment', 'segment_tracer', 'segment_reading', 'opening', 'device', 'device_point',
        'wire', 'end_to_end_check']
    loop
        execute format(
            'create trigger only_with_its_content after insert on %I referencing new table as added
             for each statement execute function refuse_parts_for_old_content()', part);
    end loop;
    foreach part in array array[
        'loom_content', 'vehicle_remark', 'node', 'segment', 'segment_tracer', 'segment_reading', 'opening', 'device',
        'device_point', 'wire', 'end_to_end_check', 'revision', 'work_order_event']
    loop
        execute format(
            'create trigger written_once before update or delete or truncate on %I
             for each statement execute function refuse_change()', part);
    end loop;
end;
$$;

create function refuse_change_of_order() returns trigger
    language plpgsql
    set search_path = pg_catalog, public, pg_temp
as $$
begin
    if (new.id, new.number, new.revision_hash, new.customer, new.workshop, new.due_date, new.notes, new.created_at)
        is distinct from
        (old.id, old.number, old.revision_hash, old.customer, old.workshop, old.due_date, old.notes, old.created_at)
    then
        raise exception 'work order % changes nothing but its status', old.number
            using errcode = 'restrict_violation';
    end if;
    return new;
end;
$$;

create trigger only_status_moves before update on work_order
    for each row execute function refuse_change_of_order();
create trigger never_removed before delete or truncate on work_order
    for each statement execute function refuse_change();

-- At commit a work order's status and version must be those of its last event, and the events must follow from one another.
create function check_order_against_events() returns trigger
    language plpgsql
    set search_path = pg_catalog, public, pg_temp
as $$
declare
    order_id uuid;
begin
    if tg_table_name = 'work_order' then
        order_id := new.id;
    else
        order_id := new.work_order_id;
    end if;
    if not exists (
        select from public.work_order o
        join public.work_order_event e on e.work_order_id = o.id and e.sequence = o.version
        where o.id = order_id and e.to_status = o.status
    ) or exists (
        select from (
            select from_status, sequence,
                lag(to_status) over in_order as status_before,
                row_number() over in_order as place,
                max(sequence) over () as last_sequence
            from public.work_order_event
            where work_order_id = order_id
            window in_order as (order by sequence)
        ) e
        join public.work_order o on o.id = order_id
        where e.from_status is distinct from e.status_before
            or e.sequence <> e.place
            or e.last_sequence <> o.version
    ) then
        raise exception 'work order % does not agree with its events', order_id
            using errcode = 'integrity_constraint_violation';
    end if;
    return null;
end;
$$;

create constraint trigger agrees_with_events after insert or update on work_order
    deferrable initially deferred
    for each row execute function check_order_against_events();
create constraint trigger agrees_with_order after insert on work_order_event
    deferrable initially deferred
    for each row execute function check_order_against_events();
