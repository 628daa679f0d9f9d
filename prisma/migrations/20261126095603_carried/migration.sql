-- CreateTable
CREATE TABLE "earlier_music" (
    "part_id" TEXT NOT NULL,
    "revision" INTEGER NOT NULL,
    "edition_id" TEXT NOT NULL,
    "content" JSON NOT NULL,
    "settled" JSON NOT NULL DEFAULT '{}',

    CONSTRAINT "earlier_music_pkey" PRIMARY KEY ("part_id","revision")
);

-- AddForeignKey
ALTER TABLE "earlier_music" ADD CONSTRAINT "earlier_music_part_id_fkey" FOREIGN KEY ("part_id") REFERENCES "part"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "earlier_music" ADD CONSTRAINT "earlier_music_edition_id_fkey" FOREIGN KEY ("edition_id") REFERENCES "edition"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
