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
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT clock_timestamp(),
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
