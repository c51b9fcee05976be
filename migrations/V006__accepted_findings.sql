-- Findings that the customer has seen and takes as they are, with the reason; they change with the specification and are frozen with it.

alter table specification
    add column accepted_json text not null default '[]' check (accepted_json is json array with unique keys);
alter table specification alter column accepted_json drop default;
grant update (accepted_json) on specification to "${appRole}";
