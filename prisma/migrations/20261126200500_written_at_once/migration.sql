-- A batch is written in one call, where it took five statements: everything it has to wait for and look at is close to the rows. Run as whoever calls it, so that
-- row-level security goes by the connection as ever. A newer program that needs another one brings it under another name: older ones go on calling this.

-- How often who sits in a section, who belongs to its ensemble as what, and when its programmes end, was changed: what the rules were told of them holds while this number does.
ALTER TABLE "section" ADD COLUMN "told" INTEGER NOT NULL DEFAULT 0;

-- Whoever writes by what they were told of a section holds its key together with others; whoever changes it, alone.
CREATE FUNCTION "section_key"("id" TEXT) RETURNS BIGINT LANGUAGE sql IMMUTABLE AS $$ SELECT hashtextextended("id", 4641) $$;

CREATE FUNCTION "tell_section_anew"("one" text) RETURNS void LANGUAGE plpgsql AS $$
BEGIN
  PERFORM pg_advisory_xact_lock(section_key(one));
  UPDATE section SET told = told + 1 WHERE id = one;
END $$;
REVOKE ALL ON FUNCTION "tell_section_anew" FROM PUBLIC;
-- Run as the owner of the tables, who sees whole tables for as long as it takes: the door changes who belongs where, and has no business in sections.
CREATE FUNCTION "sits_otherwise"() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, public AS $$
DECLARE
  seen text := coalesce(current_setting('bowline.whole', true), '');
BEGIN
  PERFORM set_config('bowline.whole', 'on', true);
  IF TG_OP <> 'INSERT' THEN PERFORM tell_section_anew(OLD.section_id); END IF;
  IF TG_OP = 'INSERT' OR (TG_OP = 'UPDATE' AND NEW.section_id <> OLD.section_id) THEN PERFORM tell_section_anew(NEW.section_id); END IF;
  PERFORM set_config('bowline.whole', seen, true);
  RETURN NULL;
END $$;
CREATE FUNCTION "tell_ensemble_anew"() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, public AS $$
DECLARE
  seen text := coalesce(current_setting('bowline.whole', true), '');
BEGIN
  PERFORM set_config('bowline.whole', 'on', true);
  -- In one order everywhere, so that two who come or go at once wait for each other and not around each other.
  PERFORM tell_section_anew(s.id) FROM (SELECT id FROM section WHERE ensemble_id = CASE WHEN TG_OP = 'DELETE' THEN OLD.ensemble_id ELSE NEW.ensemble_id END ORDER BY id) s;
  PERFORM set_config('bowline.whole', seen, true);
  RETURN NULL;
END $$;
CREATE FUNCTION "has_other_seats"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM pg_advisory_xact_lock(section_key(OLD.id));
  NEW.told := OLD.told + 1;
  RETURN NEW;
END $$;
CREATE TRIGGER "membership_told" AFTER INSERT OR UPDATE OR DELETE ON "membership" FOR EACH ROW EXECUTE FUNCTION "sits_otherwise"();
CREATE TRIGGER "programme_member_told" AFTER INSERT OR UPDATE OR DELETE ON "programme_member" FOR EACH ROW EXECUTE FUNCTION "sits_otherwise"();
CREATE TRIGGER "programme_seating_told" AFTER INSERT OR UPDATE OR DELETE ON "programme_seating" FOR EACH ROW EXECUTE FUNCTION "sits_otherwise"();
CREATE TRIGGER "belonging_told" AFTER INSERT OR UPDATE OR DELETE ON "belonging" FOR EACH ROW EXECUTE FUNCTION "tell_ensemble_anew"();
CREATE TRIGGER "work_told" AFTER UPDATE OF "programme_id" ON "work" FOR EACH ROW EXECUTE FUNCTION "tell_ensemble_anew"();
CREATE TRIGGER "programme_told" AFTER UPDATE OF "ends" ON "programme" FOR EACH ROW WHEN (OLD."ends" IS DISTINCT FROM NEW."ends") EXECUTE FUNCTION "tell_ensemble_anew"();
CREATE TRIGGER "section_told" BEFORE UPDATE OF "seats" ON "section" FOR EACH ROW EXECUTE FUNCTION "has_other_seats"();

-- Whether a programme's last day has gone by everywhere on earth.
CREATE FUNCTION "over_everywhere"("ends" date) RETURNS boolean LANGUAGE sql STABLE AS $$
  SELECT coalesce("ends" < ((now() - interval '12 hours') AT TIME ZONE 'UTC')::date, false)
$$;

-- Writes what was ruled on what was read earlier, if that still holds once everything is locked: 'written'. 'gone': there is no such part; 'moved': its log or its
-- music is elsewhere by now. Where who sits or asks, or what was answered before, is otherwise it breaks off with BL001 or the key of the log, 23505. Nothing is
-- written then.
CREATE FUNCTION "write_as_guessed"(
  "part" text, "head" integer, "revision" integer, "rewritten" integer, "section" text, "ends" date, "over" boolean, "told" integer, "sessions" text[],
  "new_head" integer, "stage" text, "locked" boolean, "open" integer,
  "seqs" integer[], "operations" text[], "names" text[], "inputs" json[], "events" json[], "bys" text[], "by_names" text[], "ats" timestamptz[],
  "state" json, "protocol" integer
) RETURNS text LANGUAGE plpgsql AS $$
#variable_conflict use_column
DECLARE
  here text;
  one text;
  holds boolean;
BEGIN
  -- The part's row orders its log. The sign-ins and the section are held before they are read, in a statement after: only that one sees what was waited for.
  UPDATE part SET head = $10, stage = $11, locked = $12, open = $13 WHERE id = $1 AND head = $2 AND revision = $3 AND rewritten = $4 RETURNING section_id INTO here;
  IF NOT FOUND THEN RETURN CASE WHEN EXISTS (SELECT FROM part p WHERE p.id = $1) THEN 'moved' ELSE 'gone' END; END IF;
  FOREACH one IN ARRAY $9 LOOP PERFORM pg_advisory_xact_lock_shared(session_key(one)); END LOOP;
  PERFORM pg_advisory_xact_lock_shared(section_key($5));
  -- Each row is looked up by itself, so that it goes by the keys even where the plan was made while the tables were empty. An operation that is in a log already
  -- breaks its key below.
  SELECT here = $5 AND over_everywhere($6) = $7 AND (SELECT s.told FROM section s WHERE s.id = $5) = $8
    AND NOT EXISTS (SELECT FROM unnest($9) AS asking(id) WHERE (SELECT true FROM session s WHERE s.id = asking.id AND s.revoked_at IS NULL AND s.expires_at > now()) IS NULL)
    AND NOT EXISTS (SELECT FROM unnest($15) AS asked(id) WHERE (SELECT true FROM refused_operation r WHERE r.operation = asked.id)) INTO holds;
  IF holds IS NOT TRUE THEN RAISE 'What the rules were told does not hold any more.' USING ERRCODE = 'BL001'; END IF;
  INSERT INTO operation (part_id, seq, operation, name, input, events, person_id, by_name, at)
    SELECT $1, row.* FROM unnest($14, $15, $16, $17, $18, $19, $20, $21) AS row;
  IF $22 IS NOT NULL THEN
    INSERT INTO snapshot (part_id, seq, state, protocol) VALUES ($1, $10, $22, $23)
      ON CONFLICT (part_id, seq) DO UPDATE SET state = excluded.state, protocol = excluded.protocol;
  END IF;
  RETURN 'written';
END $$;

-- Whether somebody belongs here is looked up for the one row that is asked for, by its key: the same rule as before, which read everybody of the ensemble each time.
ALTER POLICY "belongs_here" ON "person" USING ((SELECT true FROM "belonging" b WHERE b."ensemble_id" = current_setting('bowline.ensemble', true) AND b."person_id" = "person"."id"));
ALTER POLICY "left_here" ON "person" USING ((SELECT true FROM "departure" d WHERE d."ensemble_id" = current_setting('bowline.ensemble', true) AND d."person_id" = "person"."id"));
ALTER POLICY "belongs_here" ON "session" USING ((SELECT true FROM "belonging" b WHERE b."ensemble_id" = current_setting('bowline.ensemble', true) AND b."person_id" = "session"."person_id"));
ALTER POLICY "belongs_here" ON "letters" USING ((SELECT true FROM "belonging" b WHERE b."ensemble_id" = current_setting('bowline.ensemble', true) AND b."person_id" = "letters"."person_id"));
