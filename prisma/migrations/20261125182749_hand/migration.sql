-- CreateTable
CREATE TABLE "hand" (
    "person_id" TEXT NOT NULL,
    "factor" DOUBLE PRECISION NOT NULL,
    "short_fourth" BOOLEAN NOT NULL,

    CONSTRAINT "hand_pkey" PRIMARY KEY ("person_id")
);

-- AddForeignKey
ALTER TABLE "hand" ADD CONSTRAINT "hand_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;
