using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace MeltShop.Records.Migrations.Sqlite
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
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "HighestC",
                table: "Furnaces",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "LevelKg",
                table: "FurnaceMetals",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "PlusMinusKg",
                table: "FurnaceMetals",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "TreatedLadleId",
                table: "FurnaceMetals",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "FollowsCorrection",
                table: "CastingDecisions",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.CreateTable(
                name: "BathCorrections",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    HeatId = table.Column<long>(type: "INTEGER", nullable: false),
                    SampleId = table.Column<long>(type: "INTEGER", nullable: false),
                    Goal = table.Column<string>(type: "TEXT", nullable: false),
                    Problem = table.Column<string>(type: "TEXT", nullable: false),
                    Answer = table.Column<string>(type: "TEXT", nullable: false),
                    Versions = table.Column<string>(type: "TEXT", nullable: false),
                    TotalCost = table.Column<long>(type: "INTEGER", nullable: false),
                    EntryKey = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<long>(type: "INTEGER", nullable: false),
                    ObservedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    EnteredAt = table.Column<long>(type: "INTEGER", nullable: false),
                    SupersedesId = table.Column<long>(type: "INTEGER", nullable: true),
                    Reason = table.Column<string>(type: "TEXT", nullable: true)
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

            migrationBuilder.CreateTable(
                name: "FurnaceMetalPercents",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    FurnaceMetalId = table.Column<long>(type: "INTEGER", nullable: false),
                    Element = table.Column<string>(type: "TEXT", nullable: false),
                    Percent = table.Column<double>(type: "REAL", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_FurnaceMetalPercents", x => x.Id);
                    table.ForeignKey(
                        name: "FK_FurnaceMetalPercents_FurnaceMetals_FurnaceMetalId",
                        column: x => x.FurnaceMetalId,
                        principalTable: "FurnaceMetals",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "HeatSteps",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    HeatId = table.Column<long>(type: "INTEGER", nullable: false),
                    State = table.Column<string>(type: "TEXT", nullable: false),
                    EntryKey = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<long>(type: "INTEGER", nullable: false),
                    ObservedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    EnteredAt = table.Column<long>(type: "INTEGER", nullable: false),
                    SupersedesId = table.Column<long>(type: "INTEGER", nullable: true),
                    Reason = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_HeatSteps", x => x.Id);
                    table.ForeignKey(
                        name: "FK_HeatSteps_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_HeatSteps_HeatSteps_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "HeatSteps",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_HeatSteps_Heats_HeatId",
                        column: x => x.HeatId,
                        principalTable: "Heats",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_HeatSteps_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "LadleSteps",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    TreatedLadleId = table.Column<long>(type: "INTEGER", nullable: false),
                    State = table.Column<string>(type: "TEXT", nullable: false),
                    EntryKey = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<long>(type: "INTEGER", nullable: false),
                    ObservedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    EnteredAt = table.Column<long>(type: "INTEGER", nullable: false),
                    SupersedesId = table.Column<long>(type: "INTEGER", nullable: true),
                    Reason = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LadleSteps", x => x.Id);
                    table.ForeignKey(
                        name: "FK_LadleSteps_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LadleSteps_LadleSteps_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "LadleSteps",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LadleSteps_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LadleSteps_TreatedLadles_TreatedLadleId",
                        column: x => x.TreatedLadleId,
                        principalTable: "TreatedLadles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Heels_FurnaceId_ObservedAt_Id",
                table: "Heels",
                columns: new[] { "FurnaceId", "ObservedAt", "Id" });

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

            migrationBuilder.CreateIndex(
                name: "IX_FurnaceMetalPercents_FurnaceMetalId_Element",
                table: "FurnaceMetalPercents",
                columns: new[] { "FurnaceMetalId", "Element" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_HeatSteps_EntryKey",
                table: "HeatSteps",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_HeatSteps_HeatId",
                table: "HeatSteps",
                column: "HeatId");

            migrationBuilder.CreateIndex(
                name: "IX_HeatSteps_SupersedesId",
                table: "HeatSteps",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_LadleSteps_EntryKey",
                table: "LadleSteps",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_LadleSteps_SupersedesId",
                table: "LadleSteps",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_LadleSteps_TreatedLadleId",
                table: "LadleSteps",
                column: "TreatedLadleId");

            migrationBuilder.AddForeignKey(
                name: "FK_FurnaceMetals_TreatedLadles_TreatedLadleId",
                table: "FurnaceMetals",
                column: "TreatedLadleId",
                principalTable: "TreatedLadles",
                principalColumn: "Id",
                onDelete: ReferentialAction.Restrict);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropForeignKey(
                name: "FK_FurnaceMetals_TreatedLadles_TreatedLadleId",
                table: "FurnaceMetals");

            migrationBuilder.DropTable(
                name: "BathCorrections");

            migrationBuilder.DropTable(
                name: "FurnaceMetalPercents");

            migrationBuilder.DropTable(
                name: "HeatSteps");

            migrationBuilder.DropTable(
                name: "LadleSteps");

            migrationBuilder.DropIndex(
                name: "IX_Heels_FurnaceId_ObservedAt_Id",
                table: "Heels");

            migrationBuilder.DropColumn(
                name: "PinHash",
                table: "People");

            migrationBuilder.DropColumn(
                name: "HighestC",
                table: "Furnaces");

            migrationBuilder.DropColumn(
                name: "LevelKg",
                table: "FurnaceMetals");

            migrationBuilder.DropColumn(
                name: "PlusMinusKg",
                table: "FurnaceMetals");

            migrationBuilder.DropColumn(
                name: "TreatedLadleId",
                table: "FurnaceMetals");

            migrationBuilder.DropColumn(
                name: "FollowsCorrection",
                table: "CastingDecisions");
        }
    }
}
