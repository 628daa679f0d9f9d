-- CreateTable
CREATE TABLE "kept_set" (
    "id" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "composer" TEXT NOT NULL,
    "ensemble" TEXT NOT NULL,
    "conductor" TEXT NOT NULL,
    "season" TEXT NOT NULL,
    "bytes" BYTEA NOT NULL,
    "file_name" TEXT NOT NULL,
    "kept_by" TEXT NOT NULL,
    "kept_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "kept_set_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "kept_part" (
    "set_id" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "section" TEXT,
    "seats" TEXT[],
    "content" JSON NOT NULL,
    "log" JSON NOT NULL,
    "marks" INTEGER NOT NULL,
    "prints" TEXT[],

    CONSTRAINT "kept_part_pkey" PRIMARY KEY ("set_id","position")
);

-- CreateTable
CREATE TABLE "erratum" (
    "id" TEXT NOT NULL,
    "work_id" TEXT NOT NULL,
    "part" TEXT NOT NULL,
    "edition" TEXT NOT NULL,
    "measure" INTEGER NOT NULL,
    "number" TEXT NOT NULL,
    "says" TEXT NOT NULL,
    "should" TEXT NOT NULL,
    "by" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "settled" TIMESTAMPTZ(3),

    CONSTRAINT "erratum_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "erratum_work_id_idx" ON "erratum"("work_id");

-- AddForeignKey
ALTER TABLE "kept_part" ADD CONSTRAINT "kept_part_set_id_fkey" FOREIGN KEY ("set_id") REFERENCES "kept_set"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "erratum" ADD CONSTRAINT "erratum_work_id_fkey" FOREIGN KEY ("work_id") REFERENCES "work"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
