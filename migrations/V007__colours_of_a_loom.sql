-- Colours that a loom has and the code does not have. Content that is there has none.

create table custom_colour (
    content_id bigint not null references loom_content,
    letters text collate "C" not null check (letters ~ '^(X[A-Z]|[ACDEFHIJMQTVZ])$'),
    name text not null check (char_length(name) between 1 and 40),
    swatch text collate "C" not null check (swatch ~ '^#[0-9a-f]{6}$'),
    primary key (content_id, letters)
);

create trigger only_with_its_content after insert on custom_colour referencing new table as added
    for each statement execute function refuse_parts_for_old_content();
create trigger written_once before update or delete or truncate on custom_colour
    for each statement execute function refuse_change();

grant select, insert on custom_colour to "${appRole}";
