-- The two roles the server works as. Where whoever applies this may not make roles, they are made beforehand by the database's keeper.
DO $$ BEGIN
  IF NOT EXISTS (SELECT 1 FROM pg_roles WHERE rolname = 'bowline_app') THEN CREATE ROLE bowline_app NOLOGIN NOSUPERUSER NOBYPASSRLS; END IF;
  IF NOT EXISTS (SELECT 1 FROM pg_roles WHERE rolname = 'bowline_door') THEN CREATE ROLE bowline_door NOLOGIN NOSUPERUSER NOBYPASSRLS; END IF;
END $$;

-- CreateTable
CREATE TABLE "ensemble" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "ensemble_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "belonging" (
    "ensemble_id" TEXT NOT NULL,
    "person_id" TEXT NOT NULL,
    "librarian" BOOLEAN NOT NULL DEFAULT false,
    "deputy" BOOLEAN NOT NULL DEFAULT false,
    "since" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "belonging_pkey" PRIMARY KEY ("ensemble_id","person_id")
);

-- CreateIndex
CREATE UNIQUE INDEX "ensemble_name_key" ON "ensemble"("name");

-- CreateIndex
CREATE INDEX "belonging_person_id_idx" ON "belonging"("person_id");

-- AddForeignKey
ALTER TABLE "belonging" ADD CONSTRAINT "belonging_ensemble_id_fkey" FOREIGN KEY ("ensemble_id") REFERENCES "ensemble"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "belonging" ADD CONSTRAINT "belonging_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- What was there before belongs to one ensemble, the first; a database that is new has none yet.
INSERT INTO "ensemble" ("id", "name") SELECT gen_random_uuid()::text, 'Our ensemble'
  WHERE EXISTS (SELECT 1 FROM "person") OR EXISTS (SELECT 1 FROM "programme") OR EXISTS (SELECT 1 FROM "section") OR EXISTS (SELECT 1 FROM "kept_set");
SELECT set_config('bowline.ensemble', coalesce((SELECT "id" FROM "ensemble"), ''), true);
-- Who sat in single programmes only, was a deputy there.
INSERT INTO "belonging" ("ensemble_id", "person_id", "librarian", "deputy", "since")
  SELECT e."id", p."id", p."librarian",
    NOT p."librarian" AND EXISTS (SELECT 1 FROM "programme_member" o WHERE o."person_id" = p."id") AND NOT EXISTS (SELECT 1 FROM "membership" m WHERE m."person_id" = p."id"),
    p."created_at"
  FROM "person" p CROSS JOIN "ensemble" e;

-- DropForeignKey
ALTER TABLE "attention" DROP CONSTRAINT "attention_part_id_fkey";

-- DropForeignKey
ALTER TABLE "earlier_music" DROP CONSTRAINT "earlier_music_edition_id_fkey";

-- DropForeignKey
ALTER TABLE "earlier_music" DROP CONSTRAINT "earlier_music_part_id_fkey";

-- DropForeignKey
ALTER TABLE "edition" DROP CONSTRAINT "edition_work_id_fkey";

-- DropForeignKey
ALTER TABLE "erratum" DROP CONSTRAINT "erratum_work_id_fkey";

-- DropForeignKey
ALTER TABLE "kept_part" DROP CONSTRAINT "kept_part_set_id_fkey";

-- DropForeignKey
ALTER TABLE "membership" DROP CONSTRAINT "membership_section_id_fkey";

-- DropForeignKey
ALTER TABLE "operation" DROP CONSTRAINT "operation_part_id_fkey";

-- DropForeignKey
ALTER TABLE "part" DROP CONSTRAINT "part_edition_id_fkey";

-- DropForeignKey
ALTER TABLE "part" DROP CONSTRAINT "part_section_id_fkey";

-- DropForeignKey
ALTER TABLE "part" DROP CONSTRAINT "part_work_id_fkey";

-- DropForeignKey
ALTER TABLE "programme_seating" DROP CONSTRAINT "programme_seating_programme_id_fkey";

-- DropForeignKey
ALTER TABLE "programme_seating" DROP CONSTRAINT "programme_seating_section_id_fkey";

-- DropForeignKey
ALTER TABLE "refused_operation" DROP CONSTRAINT "refused_operation_part_id_fkey";

-- DropForeignKey
ALTER TABLE "snapshot" DROP CONSTRAINT "snapshot_part_id_fkey";

-- DropForeignKey
ALTER TABLE "work" DROP CONSTRAINT "work_programme_id_fkey";

-- DropIndex
DROP INDEX "operation_operation_key";

-- DropIndex
DROP INDEX "section_name_key";

-- AlterTable
ALTER TABLE "attention" ADD COLUMN     "ensemble_id" TEXT NOT NULL DEFAULT current_setting('bowline.ensemble'::text);

-- AlterTable
ALTER TABLE "earlier_music" ADD COLUMN     "ensemble_id" TEXT NOT NULL DEFAULT current_setting('bowline.ensemble'::text);

-- AlterTable
ALTER TABLE "edition" ADD COLUMN     "ensemble_id" TEXT NOT NULL DEFAULT current_setting('bowline.ensemble'::text);

-- AlterTable
ALTER TABLE "erratum" ADD COLUMN     "ensemble_id" TEXT NOT NULL DEFAULT current_setting('bowline.ensemble'::text);

-- AlterTable
ALTER TABLE "kept_part" DROP CONSTRAINT "kept_part_pkey",
ADD COLUMN     "ensemble_id" TEXT NOT NULL DEFAULT current_setting('bowline.ensemble'::text),
ADD CONSTRAINT "kept_part_pkey" PRIMARY KEY ("ensemble_id", "set_id", "position");

-- AlterTable
ALTER TABLE "kept_set" DROP CONSTRAINT "kept_set_pkey",
ADD COLUMN     "ensemble_id" TEXT NOT NULL DEFAULT current_setting('bowline.ensemble'::text),
ADD CONSTRAINT "kept_set_pkey" PRIMARY KEY ("ensemble_id", "id");

-- AlterTable
ALTER TABLE "membership" ADD COLUMN     "ensemble_id" TEXT NOT NULL DEFAULT current_setting('bowline.ensemble'::text);

-- AlterTable
ALTER TABLE "operation" ADD COLUMN     "ensemble_id" TEXT NOT NULL DEFAULT current_setting('bowline.ensemble'::text);

-- AlterTable
ALTER TABLE "part" ADD COLUMN     "ensemble_id" TEXT NOT NULL DEFAULT current_setting('bowline.ensemble'::text);

-- AlterTable
ALTER TABLE "person" DROP COLUMN "librarian";

-- AlterTable
ALTER TABLE "programme" ADD COLUMN     "ends" DATE,
ADD COLUMN     "ensemble_id" TEXT NOT NULL DEFAULT current_setting('bowline.ensemble'::text);

-- AlterTable
ALTER TABLE "programme_member" ADD COLUMN     "ensemble_id" TEXT NOT NULL DEFAULT current_setting('bowline.ensemble'::text);

-- AlterTable
ALTER TABLE "programme_seating" ADD COLUMN     "ensemble_id" TEXT NOT NULL DEFAULT current_setting('bowline.ensemble'::text);

-- AlterTable
ALTER TABLE "refused_operation" DROP CONSTRAINT "refused_operation_pkey",
ADD COLUMN     "ensemble_id" TEXT NOT NULL DEFAULT current_setting('bowline.ensemble'::text),
ADD CONSTRAINT "refused_operation_pkey" PRIMARY KEY ("ensemble_id", "operation");

-- AlterTable
ALTER TABLE "section" ADD COLUMN     "ensemble_id" TEXT NOT NULL DEFAULT current_setting('bowline.ensemble'::text);

-- AlterTable
ALTER TABLE "session" ADD COLUMN     "bound" BOOLEAN NOT NULL DEFAULT false,
ADD COLUMN     "ensemble_id" TEXT;

-- AlterTable
ALTER TABLE "sign_in_link" ADD COLUMN     "ensemble_id" TEXT;

-- AlterTable
ALTER TABLE "snapshot" ADD COLUMN     "ensemble_id" TEXT NOT NULL DEFAULT current_setting('bowline.ensemble'::text);

-- AlterTable
ALTER TABLE "work" ADD COLUMN     "ensemble_id" TEXT NOT NULL DEFAULT current_setting('bowline.ensemble'::text);

-- CreateIndex
CREATE UNIQUE INDEX "edition_ensemble_id_id_key" ON "edition"("ensemble_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "operation_ensemble_id_operation_key" ON "operation"("ensemble_id", "operation");

-- CreateIndex
CREATE UNIQUE INDEX "part_ensemble_id_id_key" ON "part"("ensemble_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "programme_ensemble_id_id_key" ON "programme"("ensemble_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "section_ensemble_id_id_key" ON "section"("ensemble_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "section_ensemble_id_name_key" ON "section"("ensemble_id", "name");

-- CreateIndex
CREATE UNIQUE INDEX "work_ensemble_id_id_key" ON "work"("ensemble_id", "id");

-- AddForeignKey
ALTER TABLE "attention" ADD CONSTRAINT "attention_ensemble_id_part_id_fkey" FOREIGN KEY ("ensemble_id", "part_id") REFERENCES "part"("ensemble_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "sign_in_link" ADD CONSTRAINT "sign_in_link_ensemble_id_fkey" FOREIGN KEY ("ensemble_id") REFERENCES "ensemble"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "session" ADD CONSTRAINT "session_ensemble_id_fkey" FOREIGN KEY ("ensemble_id") REFERENCES "ensemble"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "programme" ADD CONSTRAINT "programme_ensemble_id_fkey" FOREIGN KEY ("ensemble_id") REFERENCES "ensemble"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "programme_seating" ADD CONSTRAINT "programme_seating_ensemble_id_programme_id_fkey" FOREIGN KEY ("ensemble_id", "programme_id") REFERENCES "programme"("ensemble_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "programme_seating" ADD CONSTRAINT "programme_seating_ensemble_id_section_id_fkey" FOREIGN KEY ("ensemble_id", "section_id") REFERENCES "section"("ensemble_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "programme_member" ADD CONSTRAINT "programme_member_ensemble_id_person_id_fkey" FOREIGN KEY ("ensemble_id", "person_id") REFERENCES "belonging"("ensemble_id", "person_id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "work" ADD CONSTRAINT "work_ensemble_id_programme_id_fkey" FOREIGN KEY ("ensemble_id", "programme_id") REFERENCES "programme"("ensemble_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "edition" ADD CONSTRAINT "edition_ensemble_id_work_id_fkey" FOREIGN KEY ("ensemble_id", "work_id") REFERENCES "work"("ensemble_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "section" ADD CONSTRAINT "section_ensemble_id_fkey" FOREIGN KEY ("ensemble_id") REFERENCES "ensemble"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "membership" ADD CONSTRAINT "membership_ensemble_id_person_id_fkey" FOREIGN KEY ("ensemble_id", "person_id") REFERENCES "belonging"("ensemble_id", "person_id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "membership" ADD CONSTRAINT "membership_ensemble_id_section_id_fkey" FOREIGN KEY ("ensemble_id", "section_id") REFERENCES "section"("ensemble_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "part" ADD CONSTRAINT "part_ensemble_id_work_id_fkey" FOREIGN KEY ("ensemble_id", "work_id") REFERENCES "work"("ensemble_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "part" ADD CONSTRAINT "part_ensemble_id_edition_id_fkey" FOREIGN KEY ("ensemble_id", "edition_id") REFERENCES "edition"("ensemble_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "part" ADD CONSTRAINT "part_ensemble_id_section_id_fkey" FOREIGN KEY ("ensemble_id", "section_id") REFERENCES "section"("ensemble_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "earlier_music" ADD CONSTRAINT "earlier_music_ensemble_id_part_id_fkey" FOREIGN KEY ("ensemble_id", "part_id") REFERENCES "part"("ensemble_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "earlier_music" ADD CONSTRAINT "earlier_music_ensemble_id_edition_id_fkey" FOREIGN KEY ("ensemble_id", "edition_id") REFERENCES "edition"("ensemble_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "operation" ADD CONSTRAINT "operation_ensemble_id_part_id_fkey" FOREIGN KEY ("ensemble_id", "part_id") REFERENCES "part"("ensemble_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "refused_operation" ADD CONSTRAINT "refused_operation_ensemble_id_part_id_fkey" FOREIGN KEY ("ensemble_id", "part_id") REFERENCES "part"("ensemble_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "snapshot" ADD CONSTRAINT "snapshot_ensemble_id_part_id_fkey" FOREIGN KEY ("ensemble_id", "part_id") REFERENCES "part"("ensemble_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "kept_set" ADD CONSTRAINT "kept_set_ensemble_id_fkey" FOREIGN KEY ("ensemble_id") REFERENCES "ensemble"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "kept_part" ADD CONSTRAINT "kept_part_ensemble_id_set_id_fkey" FOREIGN KEY ("ensemble_id", "set_id") REFERENCES "kept_set"("ensemble_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "erratum" ADD CONSTRAINT "erratum_ensemble_id_work_id_fkey" FOREIGN KEY ("ensemble_id", "work_id") REFERENCES "work"("ensemble_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

UPDATE "programme" SET "ends" = (SELECT max((d ->> 'date')::date) FROM json_array_elements("days") d);

-- Row-level security. bowline_app sees one ensemble, the one its connection was told; bowline_door who there is and how they come in, no music.
-- Whoever owns the tables sees rows only where bowline.whole says so: migrations, backups.
DO $$ DECLARE t text; BEGIN
  FOREACH t IN ARRAY ARRAY['attention','earlier_music','edition','erratum','kept_part','kept_set','membership','operation','part','programme','programme_member','programme_seating','refused_operation','section','snapshot','work','belonging'] LOOP
    EXECUTE format('CREATE POLICY own_ensemble ON %I TO bowline_app USING (ensemble_id = current_setting(''bowline.ensemble'', true)) WITH CHECK (ensemble_id = current_setting(''bowline.ensemble'', true))', t);
  END LOOP;
  FOREACH t IN ARRAY ARRAY['ensemble','belonging','person','session','sign_in_link'] LOOP
    EXECUTE format('CREATE POLICY door ON %I TO bowline_door USING (true) WITH CHECK (true)', t);
  END LOOP;
  FOR t IN SELECT tablename FROM pg_tables WHERE schemaname = 'public' AND tablename <> '_prisma_migrations' LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', t);
    EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', t);
    EXECUTE format('CREATE POLICY whole ON %I TO %I USING (current_setting(''bowline.whole'', true) = ''on'') WITH CHECK (current_setting(''bowline.whole'', true) = ''on'')', t, current_user);
  END LOOP;
END $$;
CREATE POLICY own_ensemble ON "ensemble" FOR SELECT TO bowline_app USING ("id" = current_setting('bowline.ensemble', true));
CREATE POLICY belongs_here ON "person" FOR SELECT TO bowline_app USING (EXISTS (SELECT 1 FROM "belonging" b WHERE b."person_id" = "person"."id"));
CREATE POLICY comes_here ON "person" FOR INSERT TO bowline_app WITH CHECK (current_setting('bowline.ensemble', true) <> '');
CREATE POLICY belongs_here ON "session" FOR SELECT TO bowline_app USING (EXISTS (SELECT 1 FROM "belonging" b WHERE b."person_id" = "session"."person_id"));
CREATE POLICY belongs_here ON "letters" TO bowline_app USING (EXISTS (SELECT 1 FROM "belonging" b WHERE b."person_id" = "letters"."person_id"));
-- A hand is seen by whoever it belongs to, and by nobody else.
CREATE POLICY owner ON "hand" TO bowline_door USING ("person_id" = current_setting('bowline.person', true)) WITH CHECK ("person_id" = current_setting('bowline.person', true));
