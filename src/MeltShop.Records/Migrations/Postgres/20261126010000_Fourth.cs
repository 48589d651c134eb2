using System;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace MeltShop.Records.Migrations.Postgres
{
    /// <inheritdoc />
    public partial class Fourth : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<bool>(
                name: "GreyFracture",
                table: "Samples",
                type: "boolean",
                nullable: false,
                defaultValue: false);

            migrationBuilder.AddColumn<long>(
                name: "InstrumentId",
                table: "Samples",
                type: "bigint",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "IsMeanOnly",
                table: "Samples",
                type: "boolean",
                nullable: false,
                defaultValue: false);

            migrationBuilder.CreateTable(
                name: "Instruments",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Code = table.Column<string>(type: "text", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false),
                    Kind = table.Column<string>(type: "text", nullable: false),
                    SendsMeanOnly = table.Column<bool>(type: "boolean", nullable: false),
                    FiguresSource = table.Column<string>(type: "text", nullable: true),
                    IsActive = table.Column<bool>(type: "boolean", nullable: false),
                    Version = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Instruments", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "InstrumentElements",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    InstrumentId = table.Column<long>(type: "bigint", nullable: false),
                    Element = table.Column<string>(type: "text", nullable: false),
                    Repeatability = table.Column<double>(type: "double precision", nullable: true),
                    GuardFactor = table.Column<double>(type: "double precision", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_InstrumentElements", x => x.Id);
                    table.ForeignKey(
                        name: "FK_InstrumentElements_Instruments_InstrumentId",
                        column: x => x.InstrumentId,
                        principalTable: "Instruments",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Samples_InstrumentId_ObservedAt",
                table: "Samples",
                columns: new[] { "InstrumentId", "ObservedAt" });

            migrationBuilder.CreateIndex(
                name: "IX_InstrumentElements_InstrumentId_Element",
                table: "InstrumentElements",
                columns: new[] { "InstrumentId", "Element" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Instruments_Code",
                table: "Instruments",
                column: "Code",
                unique: true);

            migrationBuilder.AddForeignKey(
                name: "FK_Samples_Instruments_InstrumentId",
                table: "Samples",
                column: "InstrumentId",
                principalTable: "Instruments",
                principalColumn: "Id",
                onDelete: ReferentialAction.Restrict);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropForeignKey(
                name: "FK_Samples_Instruments_InstrumentId",
                table: "Samples");

            migrationBuilder.DropTable(
                name: "InstrumentElements");

            migrationBuilder.DropTable(
                name: "Instruments");

            migrationBuilder.DropIndex(
                name: "IX_Samples_InstrumentId_ObservedAt",
                table: "Samples");

            migrationBuilder.DropColumn(
                name: "GreyFracture",
                table: "Samples");

            migrationBuilder.DropColumn(
                name: "InstrumentId",
                table: "Samples");

            migrationBuilder.DropColumn(
                name: "IsMeanOnly",
                table: "Samples");
        }
    }
}
