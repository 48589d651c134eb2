using System;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace MeltShop.Records.Migrations.Postgres
{
    /// <inheritdoc />
    public partial class Second : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "PinHash",
                table: "People",
                type: "text",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "HighestC",
                table: "Furnaces",
                type: "double precision",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "BathCorrections",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    HeatId = table.Column<long>(type: "bigint", nullable: false),
                    SampleId = table.Column<long>(type: "bigint", nullable: false),
                    Goal = table.Column<string>(type: "text", nullable: false),
                    Problem = table.Column<string>(type: "text", nullable: false),
                    Answer = table.Column<string>(type: "text", nullable: false),
                    Versions = table.Column<string>(type: "text", nullable: false),
                    TotalCost = table.Column<long>(type: "bigint", nullable: false),
                    EntryKey = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<long>(type: "bigint", nullable: false),
                    ObservedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    EnteredAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    SupersedesId = table.Column<long>(type: "bigint", nullable: true),
                    Reason = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_BathCorrections", x => x.Id);
                    table.ForeignKey(
                        name: "FK_BathCorrections_BathCorrections_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "BathCorrections",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_BathCorrections_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_BathCorrections_Heats_HeatId",
                        column: x => x.HeatId,
                        principalTable: "Heats",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_BathCorrections_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_BathCorrections_Samples_SampleId",
                        column: x => x.SampleId,
                        principalTable: "Samples",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_BathCorrections_EntryKey",
                table: "BathCorrections",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_BathCorrections_HeatId",
                table: "BathCorrections",
                column: "HeatId");

            migrationBuilder.CreateIndex(
                name: "IX_BathCorrections_SupersedesId",
                table: "BathCorrections",
                column: "SupersedesId",
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "BathCorrections");

            migrationBuilder.DropColumn(
                name: "PinHash",
                table: "People");

            migrationBuilder.DropColumn(
                name: "HighestC",
                table: "Furnaces");
        }
    }
}
