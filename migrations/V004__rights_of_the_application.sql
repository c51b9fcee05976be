-- What the application's role may do: read everything, write new rows, and change the few columns that are meant to change. No
-- right to remove anything, to empty a table or to touch a trigger. The owner of the tables is another role.

do $$
begin
    if pg_has_role('${appRole}', current_user, 'member') then
        raise exception 'role ${appRole} must neither be a superuser nor belong to %, or it could change what is frozen',
            current_user;
    end if;
end;
$$;

grant usage on schema public to "${appRole}";

grant select on
    loom_content, vehicle_remark, node, segment, segment_tracer, segment_reading, opening, device, device_point, wire,
    end_to_end_check, loom, specification, revision, work_order_status, work_order_move, work_order, work_order_event, work_order_counter,
    idempotency_key
    to "${appRole}";

grant insert on
    loom_content, vehicle_remark, node, segment, segment_tracer, segment_reading, opening, device, device_point, wire,
    end_to_end_check, loom, specification, revision, work_order, work_order_event, work_order_counter, idempotency_key
    to "${appRole}";

grant update (name, content_id, version, updated_at) on loom to "${appRole}";
grant update (title, stock_content_id, amendments_json, settings_json, version, updated_at) on specification to "${appRole}";
grant update (status, version) on work_order to "${appRole}";
grant update (last_number) on work_order_counter to "${appRole}";
