-- A batch that goes by a sign-in holds it, shared, until it has committed; who ends the sign-in waits for that. So nothing of somebody who was signed out is
-- committed after the signing out. An advisory lock, since the role that writes the log may not lock rows of sessions.
CREATE FUNCTION "session_key"("id" TEXT) RETURNS BIGINT LANGUAGE sql IMMUTABLE AS $$ SELECT hashtextextended("id", 4640) $$;

CREATE FUNCTION "end_session_alone"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM pg_advisory_xact_lock(session_key(OLD."id"));
  RETURN COALESCE(NEW, OLD);
END $$;

CREATE TRIGGER "session_ends_alone" BEFORE UPDATE OF "revoked_at" ON "session" FOR EACH ROW WHEN (OLD."revoked_at" IS DISTINCT FROM NEW."revoked_at") EXECUTE FUNCTION "end_session_alone"();
CREATE TRIGGER "session_goes_alone" BEFORE DELETE ON "session" FOR EACH ROW EXECUTE FUNCTION "end_session_alone"();
-- AlterTable
ALTER TABLE "session" ADD COLUMN     "browser" TEXT NOT NULL DEFAULT 'other',
ADD COLUMN     "device" TEXT NOT NULL DEFAULT 'other',
ADD COLUMN     "proven_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
ADD COLUMN     "used_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
ADD COLUMN     "way" TEXT NOT NULL DEFAULT 'link';

-- AlterTable
ALTER TABLE "sign_in_link" ADD COLUMN     "address" TEXT,
ADD COLUMN     "id" TEXT NOT NULL DEFAULT (gen_random_uuid())::text,
ADD COLUMN     "invitation" BOOLEAN NOT NULL DEFAULT false,
ADD COLUMN     "language" TEXT;

-- CreateTable
CREATE TABLE "address" (
    "address" TEXT NOT NULL,
    "person_id" TEXT NOT NULL,
    "language" TEXT NOT NULL,
    "confirmed_at" TIMESTAMPTZ(3),

    CONSTRAINT "address_pkey" PRIMARY KEY ("address")
);

-- CreateTable
CREATE TABLE "address_claim" (
    "person_id" TEXT NOT NULL,
    "token_hash" BYTEA NOT NULL,
    "address" TEXT NOT NULL,
    "language" TEXT NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "address_claim_pkey" PRIMARY KEY ("person_id")
);

-- CreateTable
CREATE TABLE "password" (
    "person_id" TEXT NOT NULL,
    "hash" TEXT NOT NULL,
    "set_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "password_pkey" PRIMARY KEY ("person_id")
);

-- CreateTable
CREATE TABLE "identity" (
    "issuer" TEXT NOT NULL,
    "subject" TEXT NOT NULL,
    "person_id" TEXT NOT NULL,
    "bound_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "identity_pkey" PRIMARY KEY ("issuer","subject")
);

-- CreateTable
CREATE TABLE "identity_errand" (
    "token_hash" BYTEA NOT NULL,
    "session_id" TEXT,
    "link" BYTEA,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "identity_errand_pkey" PRIMARY KEY ("token_hash")
);

-- CreateTable
CREATE TABLE "attempt" (
    "key" TEXT NOT NULL,
    "count" INTEGER NOT NULL,
    "until" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "attempt_pkey" PRIMARY KEY ("key")
);

-- CreateIndex
CREATE UNIQUE INDEX "address_person_id_key" ON "address"("person_id");

-- CreateIndex
CREATE UNIQUE INDEX "address_claim_token_hash_key" ON "address_claim"("token_hash");

-- CreateIndex
CREATE INDEX "identity_person_id_idx" ON "identity"("person_id");

-- CreateIndex
CREATE INDEX "attempt_until_idx" ON "attempt"("until");

-- CreateIndex
CREATE UNIQUE INDEX "sign_in_link_id_key" ON "sign_in_link"("id");

-- AddForeignKey
ALTER TABLE "address" ADD CONSTRAINT "address_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "address_claim" ADD CONSTRAINT "address_claim_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "password" ADD CONSTRAINT "password_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "identity" ADD CONSTRAINT "identity_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- Who is signed in already proved who they are when they came.
UPDATE "session" SET "used_at" = "created_at", "proven_at" = "created_at";

-- Row-level security. How people come in is the door's business alone; a password is shown to it for one person at a time.
DO $$ DECLARE t text; BEGIN
  FOREACH t IN ARRAY ARRAY['address','address_claim','identity','identity_errand','attempt'] LOOP
    EXECUTE format('CREATE POLICY door ON %I TO bowline_door USING (true) WITH CHECK (true)', t);
  END LOOP;
  FOREACH t IN ARRAY ARRAY['address','address_claim','password','identity','identity_errand','attempt'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', t);
    EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', t);
    EXECUTE format('CREATE POLICY whole ON %I TO %I USING (current_setting(''bowline.whole'', true) = ''on'') WITH CHECK (current_setting(''bowline.whole'', true) = ''on'')', t, current_user);
  END LOOP;
END $$;
CREATE POLICY owner ON "password" TO bowline_door USING ("person_id" = current_setting('bowline.person', true)) WITH CHECK ("person_id" = current_setting('bowline.person', true));
-- CreateTable
CREATE TABLE "departure" (
    "ensemble_id" TEXT NOT NULL,
    "person_id" TEXT NOT NULL,
    "left_at" TIMESTAMPTZ(3) NOT NULL DEFAULT clock_timestamp(),

    CONSTRAINT "departure_pkey" PRIMARY KEY ("ensemble_id","person_id")
);

-- CreateTable
CREATE TABLE "trail" (
    "ensemble_id" TEXT NOT NULL DEFAULT current_setting('bowline.ensemble'::text),
    "id" TEXT NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL DEFAULT clock_timestamp(),
    "kind" TEXT NOT NULL,
    "by_id" TEXT,
    "by_name" TEXT,
    "about_id" TEXT,
    "about_name" TEXT,
    "section_id" TEXT,
    "part_id" TEXT,
    "facts" JSON NOT NULL DEFAULT '{}',

    CONSTRAINT "trail_pkey" PRIMARY KEY ("ensemble_id","id")
);

-- AlterTable
ALTER TABLE "part" ADD COLUMN     "rewritten" INTEGER NOT NULL DEFAULT 0;

-- CreateIndex
CREATE INDEX "departure_person_id_idx" ON "departure"("person_id");

-- CreateIndex
CREATE INDEX "trail_ensemble_id_at_id_idx" ON "trail"("ensemble_id", "at", "id");

-- AddForeignKey
ALTER TABLE "departure" ADD CONSTRAINT "departure_ensemble_id_fkey" FOREIGN KEY ("ensemble_id") REFERENCES "ensemble"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "departure" ADD CONSTRAINT "departure_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "trail" ADD CONSTRAINT "trail_ensemble_id_fkey" FOREIGN KEY ("ensemble_id") REFERENCES "ensemble"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- Row-level security, as for the tables before: the server's two roles, and whoever owns the tables where bowline.whole says so.
DO $$ DECLARE t text; BEGIN
  FOREACH t IN ARRAY ARRAY['departure','trail'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', t);
    EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', t);
    EXECUTE format('CREATE POLICY whole ON %I TO %I USING (current_setting(''bowline.whole'', true) = ''on'') WITH CHECK (current_setting(''bowline.whole'', true) = ''on'')', t, current_user);
    EXECUTE format('CREATE POLICY own_ensemble ON %I TO bowline_app USING (ensemble_id = current_setting(''bowline.ensemble'', true)) WITH CHECK (ensemble_id = current_setting(''bowline.ensemble'', true))', t);
  END LOOP;
END $$;
-- What happens at the door is told in every ensemble of whom it happens to; the door tells, and reads nothing of it.
CREATE POLICY door_tells ON "trail" FOR INSERT TO bowline_door WITH CHECK (true);
CREATE POLICY door ON "departure" TO bowline_door USING (true) WITH CHECK (true);
-- Who has left is still called by their name.
CREATE POLICY left_here ON "person" FOR SELECT TO bowline_app USING (EXISTS (SELECT 1 FROM "departure" d WHERE d."person_id" = "person"."id"));

-- Erasure. Neither role of the server may change a row of a log; this one function may, run as the owner of the tables, and only so far as one person's name goes.

-- What was said, as it stands once a person is gone: where they are named after @ they are called otherwise; what they said themselves goes where they wish it (`blank`).
CREATE FUNCTION "said_without"("said" jsonb, "who" text, "blank" boolean) RETURNS jsonb LANGUAGE sql IMMUTABLE SET search_path = pg_catalog AS $$
  SELECT CASE
    WHEN blank THEN (said - 'mentions') || '{"text":"…"}'
    WHEN jsonb_typeof(said -> 'mentions') IS DISTINCT FROM 'array' THEN said
    ELSE coalesce((
      SELECT said || jsonb_build_object(
        'text', replace(said ->> 'text', '@' || (m ->> 'name'), '@Former player'),
        'mentions', (SELECT jsonb_agg(CASE WHEN x ->> 'person' = who THEN x || '{"name":"Former player"}' ELSE x END ORDER BY n) FROM jsonb_array_elements(said -> 'mentions') WITH ORDINALITY AS t(x, n)))
      FROM jsonb_array_elements(said -> 'mentions') m WHERE m ->> 'person' = who LIMIT 1), said)
  END
$$;
CREATE FUNCTION "events_without"("events" jsonb, "who" text, "blank" boolean) RETURNS jsonb LANGUAGE sql IMMUTABLE SET search_path = pg_catalog, public AS $$
  SELECT coalesce(jsonb_agg(CASE WHEN e ->> 'type' = 'commented' THEN public.said_without(e, who, blank) ELSE e END ORDER BY n), '[]') FROM jsonb_array_elements(events) WITH ORDINALITY AS t(e, n)
$$;
-- A row of a log that is kept in the archive.
CREATE FUNCTION "row_without"("row" jsonb, "who" text, "blank" boolean) RETURNS jsonb LANGUAGE sql IMMUTABLE SET search_path = pg_catalog, public AS $$
  SELECT "row" || CASE WHEN "row" ->> 'by' = who THEN '{"byName":"Former player"}'::jsonb ELSE '{}' END
    || jsonb_build_object('events', public.events_without("row" -> 'events', who, blank AND "row" ->> 'by' = who))
    || CASE WHEN "row" ->> 'name' = 'comment' THEN jsonb_build_object('input', public.said_without("row" -> 'input', who, blank AND "row" ->> 'by' = who)) ELSE '{}' END
$$;

-- Takes a person out of everything: their name, and whatever hangs on them alone. Marks, votes and decisions stay. `asker`: who did it, themselves or a librarian.
-- Gives the parts whose logs read otherwise now.
CREATE FUNCTION "erase_person"("who" text, "asker" text, "blank" boolean) RETURNS TABLE ("ensemble" text, "part" text)
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, public AS $$
DECLARE
  old text;
  mentioned text := '%' || who || '%';
  touched text[];
  t record;
BEGIN
  PERFORM set_config('bowline.whole', 'on', true);
  SELECT p.name INTO old FROM person p WHERE p.id = who FOR UPDATE;
  IF old IS NULL THEN PERFORM set_config('bowline.whole', '', true); RETURN; END IF;
  -- First of all they are signed in no more, so that nothing further is written by them.
  DELETE FROM session s WHERE s.person_id = who;
  touched := ARRAY(
    SELECT o.part_id FROM operation o WHERE o.person_id = who OR (o.name = 'comment' AND (o.events::text LIKE mentioned OR o.input::text LIKE mentioned))
    UNION SELECT s.part_id FROM snapshot s WHERE s.state::text LIKE mentioned
    UNION SELECT m.part_id FROM earlier_music m WHERE m.settled::text LIKE mentioned);
  PERFORM 1 FROM part p WHERE p.id = ANY (touched) ORDER BY p.id FOR UPDATE;
  UPDATE operation o SET by_name = 'Former player' WHERE o.person_id = who;
  UPDATE operation o SET events = events_without(o.events::jsonb, who, blank AND o.person_id = who)::json, input = said_without(o.input::jsonb, who, blank AND o.person_id = who)::json
    WHERE o.name = 'comment' AND (o.events::text LIKE mentioned OR o.input::text LIKE mentioned OR (blank AND o.person_id = who));
  DELETE FROM snapshot s WHERE s.part_id = ANY (touched);
  UPDATE earlier_music m SET settled = (SELECT json_object_agg(k, CASE WHEN v ->> 'by' = who THEN v || '{"name":"Former player"}' ELSE v END) FROM jsonb_each(m.settled::jsonb) AS e(k, v))
    WHERE m.settled::text LIKE mentioned;
  UPDATE part p SET rewritten = p.rewritten + 1 WHERE p.id = ANY (touched);
  UPDATE kept_part k SET log = (SELECT coalesce(json_agg(row_without(r, who, blank) ORDER BY n), '[]') FROM jsonb_array_elements(k.log::jsonb) WITH ORDINALITY AS e(r, n)) WHERE k.log::text LIKE mentioned;
  -- Where a name alone was kept, it is theirs unless somebody else of that ensemble is called the same.
  FOR t IN SELECT e.id FROM ensemble e WHERE EXISTS (SELECT 1 FROM belonging b WHERE b.ensemble_id = e.id AND b.person_id = who UNION SELECT 1 FROM departure d WHERE d.ensemble_id = e.id AND d.person_id = who) LOOP
    IF NOT EXISTS (SELECT 1 FROM person p WHERE p.name = old AND p.id <> who AND (p.id IN (SELECT b.person_id FROM belonging b WHERE b.ensemble_id = t.id) OR p.id IN (SELECT d.person_id FROM departure d WHERE d.ensemble_id = t.id))) THEN
      UPDATE kept_set k SET kept_by = 'Former player' WHERE k.ensemble_id = t.id AND k.kept_by = old;
      UPDATE erratum x SET by = 'Former player' WHERE x.ensemble_id = t.id AND x.by = old;
    END IF;
    INSERT INTO trail (ensemble_id, id, kind, by_id, by_name, about_id, about_name) SELECT t.id, gen_random_uuid()::text, 'erased', p.id, p.name, who, 'Former player' FROM person p WHERE p.id = asker;
  END LOOP;
  UPDATE trail r SET by_name = 'Former player' WHERE r.by_id = who;
  UPDATE trail r SET about_name = 'Former player' WHERE r.about_id = who;
  UPDATE person p SET name = 'Former player' WHERE p.id = who;
  -- Whatever hangs on a person and goes with them: seats, links, ways in, hand, letters, how far they had read.
  FOR t IN SELECT c.conrelid::regclass AS held, a.attname AS col FROM pg_constraint c JOIN pg_attribute a ON a.attrelid = c.conrelid AND a.attnum = c.conkey[1]
      WHERE c.contype = 'f' AND c.confrelid = 'person'::regclass AND c.confdeltype = 'c' AND array_length(c.conkey, 1) = 1 LOOP
    EXECUTE format('DELETE FROM %s WHERE %I = $1', t.held, t.col) USING who;
  END LOOP;
  RETURN QUERY SELECT p.ensemble_id, p.id FROM part p WHERE p.id = ANY (touched);
  PERFORM set_config('bowline.whole', '', true);
END $$;
REVOKE ALL ON FUNCTION "said_without", "events_without", "row_without", "erase_person" FROM PUBLIC;
GRANT EXECUTE ON FUNCTION "erase_person" TO bowline_door;
