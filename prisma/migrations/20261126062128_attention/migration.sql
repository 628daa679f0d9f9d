-- CreateTable
CREATE TABLE "letters" (
    "person_id" TEXT NOT NULL,
    "address" TEXT NOT NULL,
    "language" TEXT NOT NULL,
    "sent_at" TIMESTAMPTZ(3),
    "reminded_at" TIMESTAMPTZ(3),

    CONSTRAINT "letters_pkey" PRIMARY KEY ("person_id")
);

-- CreateTable
CREATE TABLE "attention" (
    "person_id" TEXT NOT NULL,
    "part_id" TEXT NOT NULL,
    "seen" INTEGER NOT NULL DEFAULT 0,
    "told" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "attention_pkey" PRIMARY KEY ("person_id","part_id")
);

-- AddForeignKey
ALTER TABLE "letters" ADD CONSTRAINT "letters_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "attention" ADD CONSTRAINT "attention_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "attention" ADD CONSTRAINT "attention_part_id_fkey" FOREIGN KEY ("part_id") REFERENCES "part"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
