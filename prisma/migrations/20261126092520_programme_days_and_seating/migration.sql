-- AlterTable
ALTER TABLE "programme" ADD COLUMN     "conductor" TEXT NOT NULL DEFAULT '',
ADD COLUMN     "days" JSON NOT NULL DEFAULT '[]',
ADD COLUMN     "deadlines" JSON NOT NULL DEFAULT '{}',
ADD COLUMN     "season" TEXT NOT NULL DEFAULT '';

-- The two days a programme had become the first of its days.
UPDATE "programme" SET "days" = (
  SELECT coalesce(json_agg(json_build_object('kind', kind, 'date', to_char(day, 'YYYY-MM-DD'), 'time', NULL, 'words', '') ORDER BY day), '[]')
  FROM (VALUES ('rehearsal', "first_rehearsal"), ('concert', "concert")) AS had(kind, day)
  WHERE day IS NOT NULL
);

-- AlterTable
ALTER TABLE "programme" DROP COLUMN "concert",
DROP COLUMN "first_rehearsal";

-- CreateTable
CREATE TABLE "programme_seating" (
    "programme_id" TEXT NOT NULL,
    "section_id" TEXT NOT NULL,
    "seats" TEXT[],

    CONSTRAINT "programme_seating_pkey" PRIMARY KEY ("programme_id","section_id")
);

-- CreateTable
CREATE TABLE "programme_member" (
    "programme_id" TEXT NOT NULL,
    "section_id" TEXT NOT NULL,
    "person_id" TEXT NOT NULL,
    "principal" BOOLEAN NOT NULL DEFAULT false,
    "seat" TEXT,

    CONSTRAINT "programme_member_pkey" PRIMARY KEY ("programme_id","section_id","person_id")
);

-- CreateIndex
CREATE UNIQUE INDEX "programme_member_programme_id_section_id_seat_key" ON "programme_member"("programme_id", "section_id", "seat");

-- AddForeignKey
ALTER TABLE "programme_seating" ADD CONSTRAINT "programme_seating_programme_id_fkey" FOREIGN KEY ("programme_id") REFERENCES "programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "programme_seating" ADD CONSTRAINT "programme_seating_section_id_fkey" FOREIGN KEY ("section_id") REFERENCES "section"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "programme_member" ADD CONSTRAINT "programme_member_programme_id_section_id_fkey" FOREIGN KEY ("programme_id", "section_id") REFERENCES "programme_seating"("programme_id", "section_id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "programme_member" ADD CONSTRAINT "programme_member_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;
