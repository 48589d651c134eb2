using System;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace MeltShop.Records.Migrations.Postgres
{
    /// <inheritdoc />
    public partial class Sixth : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<double>(
                name: "BathRecoveryPercent",
                table: "MaterialPercents",
                type: "double precision",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "LotPlaces",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    MaterialId = table.Column<long>(type: "bigint", nullable: false),
                    Lot = table.Column<string>(type: "text", nullable: true),
                    Bin = table.Column<string>(type: "text", nullable: true),
                    EntryKey = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<long>(type: "bigint", nullable: false),
                    ObservedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    EnteredAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    SupersedesId = table.Column<long>(type: "bigint", nullable: true),
                    Reason = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LotPlaces", x => x.Id);
                    table.ForeignKey(
                        name: "FK_LotPlaces_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LotPlaces_LotPlaces_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "LotPlaces",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LotPlaces_Materials_MaterialId",
                        column: x => x.MaterialId,
                        principalTable: "Materials",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LotPlaces_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_StockFacts_Lot",
                table: "StockFacts",
                column: "Lot",
                filter: "\"Lot\" IS NOT NULL");

            migrationBuilder.CreateIndex(
                name: "IX_Samples_CoinNumber",
                table: "Samples",
                column: "CoinNumber",
                filter: "\"CoinNumber\" IS NOT NULL");

            migrationBuilder.CreateIndex(
                name: "IX_CoinsOnTheirWay_CoinNumber",
                table: "CoinsOnTheirWay",
                column: "CoinNumber");

            migrationBuilder.CreateIndex(
                name: "IX_LotPlaces_EntryKey",
                table: "LotPlaces",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_LotPlaces_MaterialId",
                table: "LotPlaces",
                column: "MaterialId");

            migrationBuilder.CreateIndex(
                name: "IX_LotPlaces_SupersedesId",
                table: "LotPlaces",
                column: "SupersedesId",
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "LotPlaces");

            migrationBuilder.DropIndex(
                name: "IX_StockFacts_Lot",
                table: "StockFacts");

            migrationBuilder.DropIndex(
                name: "IX_Samples_CoinNumber",
                table: "Samples");

            migrationBuilder.DropIndex(
                name: "IX_CoinsOnTheirWay_CoinNumber",
                table: "CoinsOnTheirWay");

            migrationBuilder.DropColumn(
                name: "BathRecoveryPercent",
                table: "MaterialPercents");
        }
    }
}
