-- A batch is written in one call, where it took five statements: everything it has to wait for and look at is close to the rows. Run as whoever calls it, so that
-- row-level security goes by the connection as ever. A newer program that needs another one brings it under another name: older ones go on calling this.

-- Who sits and asks, as the rules are told of it: seats and members of the programme's own seating where it has one, else the section's. The plan is made once a
-- connection, perhaps when the tables were empty: each row is looked up by itself, so that it goes by the keys even then.
CREATE FUNCTION "seated_here"("keys" text[], "persons" text[], "sessions" text[], "section" text, "programme" text, "over" boolean)
RETURNS TABLE ("seats" text[], "key" text, "id" text, "name" text, "librarian" boolean, "principal" boolean, "seat" text, "told" text) LANGUAGE sql STABLE AS $$
  SELECT g.seats, a.key, a.id, a.name, a.librarian, coalesce(o.principal, m.principal), coalesce(o.seat, m.seat),
    (a.id, a.name, a.librarian, coalesce(o.principal, m.principal), coalesce(o.seat, m.seat))::text
  FROM (SELECT ps.section_id IS NOT NULL AS own, coalesce(ps.seats, s.seats) AS seats FROM (SELECT $4 AS section) part
    LEFT JOIN section s ON s.id = part.section
    LEFT JOIN programme_seating ps ON ps.section_id = part.section AND ps.programme_id = $5) g
  LEFT JOIN (SELECT a.key, p.*, b.* FROM unnest($1, $2, $3) AS a(key, person, session)
    CROSS JOIN LATERAL (SELECT id, name FROM person WHERE id = a.person LIMIT 1) p
    CROSS JOIN LATERAL (SELECT librarian, deputy FROM belonging WHERE person_id = a.person LIMIT 1) b
    WHERE a.session IS NULL OR (SELECT true FROM session s WHERE s.id = a.session AND s.person_id = a.person AND s.revoked_at IS NULL AND s.expires_at > now())) a ON true
  LEFT JOIN LATERAL (SELECT principal, seat FROM membership WHERE NOT g.own AND NOT a.deputy AND person_id = a.id AND section_id = $4 LIMIT 1) m ON true
  LEFT JOIN LATERAL (SELECT principal, seat FROM programme_member WHERE g.own AND person_id = a.id AND section_id = $4 AND programme_id = $5 AND NOT (a.deputy AND $6) LIMIT 1) o ON true
$$;

-- Where a part is: what stands in a row of it, its programme, and whether that one's last day has gone by everywhere on earth.
CREATE FUNCTION "place_of_part"("part" text)
RETURNS TABLE ("id" text, "head" integer, "revision" integer, "rewritten" integer, "section" text, "programme" text, "over" boolean) LANGUAGE sql STABLE AS $$
  SELECT p.id, p.head, p.revision, p.rewritten, p.section_id, w.programme_id, coalesce(g.ends < ((now() - interval '12 hours') AT TIME ZONE 'UTC')::date, false)
  FROM part p JOIN work w ON w.id = p.work_id JOIN programme g ON g.id = w.programme_id WHERE p.id = $1
$$;

-- Writes what was ruled on what was read earlier, if that still holds once everything is locked. 'gone': there is no such part; 'moved': its log or its music is
-- elsewhere by now; 'elsewise': who sits or asks, or what was answered before, is; 'written'. Only the last has written anything.
CREATE FUNCTION "write_as_guessed"(
  "keys" text[], "persons" text[], "sessions" text[], "section" text, "programme" text, "over" boolean,
  "part" text, "head" integer, "revision" integer, "rewritten" integer, "seats" text[], "told" text[],
  "new_head" integer, "stage" text, "locked" boolean, "open" integer,
  "seqs" integer[], "operations" text[], "names" text[], "inputs" json[], "events" json[], "bys" text[], "by_names" text[], "ats" timestamptz[],
  "state" json, "protocol" integer
) RETURNS text LANGUAGE plpgsql AS $$
#variable_conflict use_column
DECLARE
  place record;
BEGIN
  -- The part's row orders its log. The sign-ins and the section are held before they are read, in the statement after: only that one sees what was waited for.
  SELECT p.head, p.revision, p.rewritten INTO place FROM part p WHERE p.id = $7 FOR UPDATE;
  IF NOT FOUND THEN RETURN 'gone'; END IF;
  IF (place.head, place.revision, place.rewritten) IS DISTINCT FROM ($8, $9, $10) THEN RETURN 'moved'; END IF;
  PERFORM pg_advisory_xact_lock_shared(session_key(one)) FROM unnest($3) AS one WHERE one IS NOT NULL;
  PERFORM 1 FROM section s WHERE s.id = $4 FOR SHARE;
  WITH seated AS (SELECT * FROM seated_here($1, $2, $3, $4, $5, $6)),
    fits AS (SELECT p.id FROM place_of_part($7) p
      WHERE p.section IS NOT DISTINCT FROM $4 AND p.programme = $5 AND p.over = $6
        AND (SELECT s.seats FROM seated s LIMIT 1) IS NOT DISTINCT FROM $11
        AND (SELECT array_agg(s.told ORDER BY s.key COLLATE "C") FROM seated s) IS NOT DISTINCT FROM $12
        AND NOT EXISTS (SELECT FROM unnest($18) AS asked(id)
          WHERE (SELECT true FROM operation o WHERE o.operation = asked.id) OR (SELECT true FROM refused_operation r WHERE r.operation = asked.id))),
    moved AS (UPDATE part SET head = $13, stage = $14, locked = $15, open = $16 FROM fits WHERE part.id = fits.id RETURNING part.id)
  INSERT INTO operation (part_id, seq, operation, name, input, events, person_id, by_name, at)
  SELECT moved.id, row.* FROM moved, unnest($17, $18, $19, $20, $21, $22, $23, $24) AS row;
  IF NOT FOUND THEN RETURN 'elsewise'; END IF;
  IF $25 IS NOT NULL THEN
    INSERT INTO snapshot (part_id, seq, state, protocol) VALUES ($7, $13, $25, $26)
      ON CONFLICT (part_id, seq) DO UPDATE SET state = excluded.state, protocol = excluded.protocol;
  END IF;
  RETURN 'written';
END $$;
