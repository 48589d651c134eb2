using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace MeltShop.Records.Migrations.Sqlite
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
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.AddColumn<long>(
                name: "InstrumentId",
                table: "Samples",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "IsMeanOnly",
                table: "Samples",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.CreateTable(
                name: "Instruments",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Code = table.Column<string>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    SendsMeanOnly = table.Column<bool>(type: "INTEGER", nullable: false),
                    FiguresSource = table.Column<string>(type: "TEXT", nullable: true),
                    IsActive = table.Column<bool>(type: "INTEGER", nullable: false),
                    Version = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Instruments", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "InstrumentElements",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    InstrumentId = table.Column<long>(type: "INTEGER", nullable: false),
                    Element = table.Column<string>(type: "TEXT", nullable: false),
                    Repeatability = table.Column<double>(type: "REAL", nullable: true),
                    GuardFactor = table.Column<double>(type: "REAL", nullable: true)
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
