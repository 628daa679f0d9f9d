-- CreateTable
CREATE TABLE "person" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "librarian" BOOLEAN NOT NULL DEFAULT false,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "person_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "sign_in_link" (
    "token_hash" BYTEA NOT NULL,
    "person_id" TEXT NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "used_at" TIMESTAMPTZ(3),

    CONSTRAINT "sign_in_link_pkey" PRIMARY KEY ("token_hash")
);

-- CreateTable
CREATE TABLE "session" (
    "id" TEXT NOT NULL,
    "token_hash" BYTEA NOT NULL,
    "person_id" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "revoked_at" TIMESTAMPTZ(3),

    CONSTRAINT "session_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "programme" (
    "id" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "first_rehearsal" DATE,
    "concert" DATE,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "programme_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "work" (
    "id" TEXT NOT NULL,
    "programme_id" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "composer" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "work_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "edition" (
    "id" TEXT NOT NULL,
    "work_id" TEXT NOT NULL,
    "bytes" BYTEA NOT NULL,
    "sha256" TEXT NOT NULL,
    "file_name" TEXT NOT NULL,
    "imported_by" TEXT NOT NULL,
    "imported_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "edition_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "section" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "instrument" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "seats" TEXT[],
    "settings" JSON NOT NULL DEFAULT '{}',

    CONSTRAINT "section_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "membership" (
    "person_id" TEXT NOT NULL,
    "section_id" TEXT NOT NULL,
    "principal" BOOLEAN NOT NULL DEFAULT false,
    "seat" TEXT,

    CONSTRAINT "membership_pkey" PRIMARY KEY ("person_id","section_id")
);

-- CreateTable
CREATE TABLE "part" (
    "id" TEXT NOT NULL,
    "work_id" TEXT NOT NULL,
    "edition_id" TEXT NOT NULL,
    "section_id" TEXT,
    "xml_part_id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "instrument" TEXT,
    "position" INTEGER NOT NULL,
    "content" JSON NOT NULL,
    "measures" INTEGER NOT NULL,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "head" INTEGER NOT NULL DEFAULT 0,
    "stage" TEXT NOT NULL DEFAULT 'pulled',
    "locked" BOOLEAN NOT NULL DEFAULT false,
    "open" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "part_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "operation" (
    "part_id" TEXT NOT NULL,
    "seq" INTEGER NOT NULL,
    "operation" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "input" JSON NOT NULL,
    "events" JSON NOT NULL,
    "person_id" TEXT NOT NULL,
    "by_name" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "operation_pkey" PRIMARY KEY ("part_id","seq")
);

-- CreateTable
CREATE TABLE "refused_operation" (
    "operation" TEXT NOT NULL,
    "part_id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "person_id" TEXT NOT NULL,
    "refusal" JSON NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "refused_operation_pkey" PRIMARY KEY ("operation")
);

-- CreateTable
CREATE TABLE "snapshot" (
    "part_id" TEXT NOT NULL,
    "seq" INTEGER NOT NULL,
    "state" JSON NOT NULL,
    "protocol" INTEGER NOT NULL,

    CONSTRAINT "snapshot_pkey" PRIMARY KEY ("part_id","seq")
);

-- CreateIndex
CREATE INDEX "sign_in_link_person_id_idx" ON "sign_in_link"("person_id");

-- CreateIndex
CREATE UNIQUE INDEX "session_token_hash_key" ON "session"("token_hash");

-- CreateIndex
CREATE INDEX "session_person_id_idx" ON "session"("person_id");

-- CreateIndex
CREATE INDEX "work_programme_id_idx" ON "work"("programme_id");

-- CreateIndex
CREATE INDEX "edition_work_id_idx" ON "edition"("work_id");

-- CreateIndex
CREATE UNIQUE INDEX "section_name_key" ON "section"("name");

-- CreateIndex
CREATE UNIQUE INDEX "membership_section_id_seat_key" ON "membership"("section_id", "seat");

-- CreateIndex
CREATE INDEX "part_work_id_idx" ON "part"("work_id");

-- CreateIndex
CREATE INDEX "part_section_id_idx" ON "part"("section_id");

-- CreateIndex
CREATE UNIQUE INDEX "operation_operation_key" ON "operation"("operation");

-- CreateIndex
CREATE INDEX "refused_operation_part_id_idx" ON "refused_operation"("part_id");

-- AddForeignKey
ALTER TABLE "sign_in_link" ADD CONSTRAINT "sign_in_link_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "session" ADD CONSTRAINT "session_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "work" ADD CONSTRAINT "work_programme_id_fkey" FOREIGN KEY ("programme_id") REFERENCES "programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "edition" ADD CONSTRAINT "edition_work_id_fkey" FOREIGN KEY ("work_id") REFERENCES "work"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "edition" ADD CONSTRAINT "edition_imported_by_fkey" FOREIGN KEY ("imported_by") REFERENCES "person"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "membership" ADD CONSTRAINT "membership_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "membership" ADD CONSTRAINT "membership_section_id_fkey" FOREIGN KEY ("section_id") REFERENCES "section"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "part" ADD CONSTRAINT "part_work_id_fkey" FOREIGN KEY ("work_id") REFERENCES "work"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "part" ADD CONSTRAINT "part_edition_id_fkey" FOREIGN KEY ("edition_id") REFERENCES "edition"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "part" ADD CONSTRAINT "part_section_id_fkey" FOREIGN KEY ("section_id") REFERENCES "section"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "operation" ADD CONSTRAINT "operation_part_id_fkey" FOREIGN KEY ("part_id") REFERENCES "part"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "operation" ADD CONSTRAINT "operation_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "refused_operation" ADD CONSTRAINT "refused_operation_part_id_fkey" FOREIGN KEY ("part_id") REFERENCES "part"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "refused_operation" ADD CONSTRAINT "refused_operation_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "snapshot" ADD CONSTRAINT "snapshot_part_id_fkey" FOREIGN KEY ("part_id") REFERENCES "part"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
