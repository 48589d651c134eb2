using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace MeltShop.Records.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class Third : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<double>(
                name: "LeastMinutesToFloor",
                table: "Taps",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "MgLeastPercent",
                table: "Taps",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "MgMostPercent",
                table: "Taps",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "StartedAt",
                table: "Taps",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Checks",
                table: "PocketCards",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "CoverKg",
                table: "PocketCards",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "CoverMaterialId",
                table: "PocketCards",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "HeatLossKPerMinute",
                table: "PocketCards",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "HouseMinutes",
                table: "PocketCards",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "InoculationMinutes",
                table: "PocketCards",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "LargestIronKg",
                table: "PocketCards",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "LeastPouringC",
                table: "PocketCards",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "MgFadeMostPercentPerMinute",
                table: "PocketCards",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "MgRecoveryLeastPercent",
                table: "PocketCards",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "MgRecoveryMostPercent",
                table: "PocketCards",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "MouldInoculantKg",
                table: "PocketCards",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "NeededAlloyKg",
                table: "PocketCards",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "PearliteKg",
                table: "PocketCards",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "PearliteMaterialId",
                table: "PocketCards",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Process",
                table: "PocketCards",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "StreamInoculantKg",
                table: "PocketCards",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "TreatmentLossK",
                table: "PocketCards",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "CapacityKg",
                table: "Ladles",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "HasLid",
                table: "Ladles",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "HeightToDiameter",
                table: "Ladles",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "HouseMinutes",
                table: "Ladles",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "InoculationMinutes",
                table: "Ladles",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "LeastPouringC",
                table: "Ladles",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "MostTreatmentC",
                table: "Ladles",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Preheat",
                table: "Ladles",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "PreheatSeenAt",
                table: "Ladles",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "TreatmentLossK",
                table: "Ladles",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "WireMetresPerMinute",
                table: "Ladles",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "WireMgGramsPerMetre",
                table: "Ladles",
                type: "REAL",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "Certificates",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    TreatedLadleId = table.Column<long>(type: "INTEGER", nullable: false),
                    Number = table.Column<string>(type: "TEXT", nullable: false),
                    Revision = table.Column<int>(type: "INTEGER", nullable: false),
                    Document = table.Column<byte[]>(type: "BLOB", nullable: false),
                    Sha256 = table.Column<string>(type: "TEXT", nullable: false),
                    TrailHead = table.Column<string>(type: "TEXT", nullable: false),
                    EntryKey = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<long>(type: "INTEGER", nullable: false),
                    ObservedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    EnteredAt = table.Column<long>(type: "INTEGER", nullable: false),
                    SupersedesId = table.Column<long>(type: "INTEGER", nullable: true),
                    Reason = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Certificates", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Certificates_Certificates_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "Certificates",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Certificates_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Certificates_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Certificates_TreatedLadles_TreatedLadleId",
                        column: x => x.TreatedLadleId,
                        principalTable: "TreatedLadles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "LadleFigures",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    LadleId = table.Column<long>(type: "INTEGER", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    Value = table.Column<double>(type: "REAL", nullable: false),
                    Least = table.Column<double>(type: "REAL", nullable: true),
                    Most = table.Column<double>(type: "REAL", nullable: true),
                    Standing = table.Column<string>(type: "TEXT", nullable: false),
                    Source = table.Column<string>(type: "TEXT", nullable: false),
                    EntryKey = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<long>(type: "INTEGER", nullable: false),
                    ObservedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    EnteredAt = table.Column<long>(type: "INTEGER", nullable: false),
                    SupersedesId = table.Column<long>(type: "INTEGER", nullable: true),
                    Reason = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LadleFigures", x => x.Id);
                    table.ForeignKey(
                        name: "FK_LadleFigures_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LadleFigures_LadleFigures_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "LadleFigures",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LadleFigures_Ladles_LadleId",
                        column: x => x.LadleId,
                        principalTable: "Ladles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LadleFigures_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "LadleInoculations",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    TreatedLadleId = table.Column<long>(type: "INTEGER", nullable: false),
                    Place = table.Column<string>(type: "TEXT", nullable: false),
                    MaterialId = table.Column<long>(type: "INTEGER", nullable: false),
                    Kg = table.Column<double>(type: "REAL", nullable: false),
                    IsWithdrawn = table.Column<bool>(type: "INTEGER", nullable: false),
                    EntryKey = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<long>(type: "INTEGER", nullable: false),
                    ObservedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    EnteredAt = table.Column<long>(type: "INTEGER", nullable: false),
                    SupersedesId = table.Column<long>(type: "INTEGER", nullable: true),
                    Reason = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LadleInoculations", x => x.Id);
                    table.ForeignKey(
                        name: "FK_LadleInoculations_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LadleInoculations_LadleInoculations_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "LadleInoculations",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LadleInoculations_Materials_MaterialId",
                        column: x => x.MaterialId,
                        principalTable: "Materials",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LadleInoculations_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LadleInoculations_TreatedLadles_TreatedLadleId",
                        column: x => x.TreatedLadleId,
                        principalTable: "TreatedLadles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "LadleRests",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    TreatedLadleId = table.Column<long>(type: "INTEGER", nullable: false),
                    IntoLadleId = table.Column<long>(type: "INTEGER", nullable: true),
                    Kg = table.Column<double>(type: "REAL", nullable: false),
                    MixedMgPercent = table.Column<double>(type: "REAL", nullable: true),
                    MinutesToFloor = table.Column<double>(type: "REAL", nullable: true),
                    IsWithdrawn = table.Column<bool>(type: "INTEGER", nullable: false),
                    EntryKey = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<long>(type: "INTEGER", nullable: false),
                    ObservedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    EnteredAt = table.Column<long>(type: "INTEGER", nullable: false),
                    SupersedesId = table.Column<long>(type: "INTEGER", nullable: true),
                    Reason = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LadleRests", x => x.Id);
                    table.ForeignKey(
                        name: "FK_LadleRests_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LadleRests_LadleRests_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "LadleRests",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LadleRests_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LadleRests_TreatedLadles_IntoLadleId",
                        column: x => x.IntoLadleId,
                        principalTable: "TreatedLadles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LadleRests_TreatedLadles_TreatedLadleId",
                        column: x => x.TreatedLadleId,
                        principalTable: "TreatedLadles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "MagnesiumDoses",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    TreatedLadleId = table.Column<long>(type: "INTEGER", nullable: false),
                    MaterialId = table.Column<long>(type: "INTEGER", nullable: true),
                    Kg = table.Column<double>(type: "REAL", nullable: false),
                    WireMetres = table.Column<double>(type: "REAL", nullable: true),
                    FeedSeconds = table.Column<double>(type: "REAL", nullable: true),
                    MgPercent = table.Column<double>(type: "REAL", nullable: false),
                    MgLeastPercent = table.Column<double>(type: "REAL", nullable: true),
                    MinutesToFloor = table.Column<double>(type: "REAL", nullable: true),
                    LeastMinutesToFloor = table.Column<double>(type: "REAL", nullable: true),
                    EntryKey = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<long>(type: "INTEGER", nullable: false),
                    ObservedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    EnteredAt = table.Column<long>(type: "INTEGER", nullable: false),
                    SupersedesId = table.Column<long>(type: "INTEGER", nullable: true),
                    Reason = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_MagnesiumDoses", x => x.Id);
                    table.ForeignKey(
                        name: "FK_MagnesiumDoses_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_MagnesiumDoses_MagnesiumDoses_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "MagnesiumDoses",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_MagnesiumDoses_Materials_MaterialId",
                        column: x => x.MaterialId,
                        principalTable: "Materials",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_MagnesiumDoses_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_MagnesiumDoses_TreatedLadles_TreatedLadleId",
                        column: x => x.TreatedLadleId,
                        principalTable: "TreatedLadles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "PouredMoulds",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    TreatedLadleId = table.Column<long>(type: "INTEGER", nullable: false),
                    Label = table.Column<string>(type: "TEXT", nullable: false),
                    FirstAt = table.Column<long>(type: "INTEGER", nullable: false),
                    Kg = table.Column<double>(type: "REAL", nullable: false),
                    LateFor = table.Column<string>(type: "TEXT", nullable: true),
                    StopAt = table.Column<long>(type: "INTEGER", nullable: true),
                    IsWithdrawn = table.Column<bool>(type: "INTEGER", nullable: false),
                    EntryKey = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<long>(type: "INTEGER", nullable: false),
                    ObservedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    EnteredAt = table.Column<long>(type: "INTEGER", nullable: false),
                    SupersedesId = table.Column<long>(type: "INTEGER", nullable: true),
                    Reason = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PouredMoulds", x => x.Id);
                    table.ForeignKey(
                        name: "FK_PouredMoulds_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_PouredMoulds_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_PouredMoulds_PouredMoulds_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "PouredMoulds",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_PouredMoulds_TreatedLadles_TreatedLadleId",
                        column: x => x.TreatedLadleId,
                        principalTable: "TreatedLadles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "TestPieces",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    TreatedLadleId = table.Column<long>(type: "INTEGER", nullable: false),
                    Label = table.Column<string>(type: "TEXT", nullable: false),
                    Shape = table.Column<string>(type: "TEXT", nullable: false),
                    SampleType = table.Column<string>(type: "TEXT", nullable: false),
                    WallMm = table.Column<double>(type: "REAL", nullable: false),
                    TestUnit = table.Column<string>(type: "TEXT", nullable: false),
                    EntryKey = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<long>(type: "INTEGER", nullable: false),
                    ObservedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    EnteredAt = table.Column<long>(type: "INTEGER", nullable: false),
                    SupersedesId = table.Column<long>(type: "INTEGER", nullable: true),
                    Reason = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_TestPieces", x => x.Id);
                    table.ForeignKey(
                        name: "FK_TestPieces_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_TestPieces_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_TestPieces_TestPieces_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "TestPieces",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_TestPieces_TreatedLadles_TreatedLadleId",
                        column: x => x.TreatedLadleId,
                        principalTable: "TreatedLadles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "TestResults",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    TestPieceId = table.Column<long>(type: "INTEGER", nullable: false),
                    Property = table.Column<string>(type: "TEXT", nullable: false),
                    Value = table.Column<double>(type: "REAL", nullable: false),
                    Method = table.Column<string>(type: "TEXT", nullable: true),
                    EntryKey = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<long>(type: "INTEGER", nullable: false),
                    ObservedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    EnteredAt = table.Column<long>(type: "INTEGER", nullable: false),
                    SupersedesId = table.Column<long>(type: "INTEGER", nullable: true),
                    Reason = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_TestResults", x => x.Id);
                    table.ForeignKey(
                        name: "FK_TestResults_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_TestResults_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_TestResults_TestPieces_TestPieceId",
                        column: x => x.TestPieceId,
                        principalTable: "TestPieces",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_TestResults_TestResults_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "TestResults",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Certificates_EntryKey",
                table: "Certificates",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_Certificates_SupersedesId",
                table: "Certificates",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Certificates_TreatedLadleId_Revision",
                table: "Certificates",
                columns: new[] { "TreatedLadleId", "Revision" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_LadleFigures_EntryKey",
                table: "LadleFigures",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_LadleFigures_LadleId",
                table: "LadleFigures",
                column: "LadleId");

            migrationBuilder.CreateIndex(
                name: "IX_LadleFigures_SupersedesId",
                table: "LadleFigures",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_LadleInoculations_EntryKey",
                table: "LadleInoculations",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_LadleInoculations_SupersedesId",
                table: "LadleInoculations",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_LadleInoculations_TreatedLadleId",
                table: "LadleInoculations",
                column: "TreatedLadleId");

            migrationBuilder.CreateIndex(
                name: "IX_LadleRests_EntryKey",
                table: "LadleRests",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_LadleRests_IntoLadleId",
                table: "LadleRests",
                column: "IntoLadleId");

            migrationBuilder.CreateIndex(
                name: "IX_LadleRests_SupersedesId",
                table: "LadleRests",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_LadleRests_TreatedLadleId",
                table: "LadleRests",
                column: "TreatedLadleId");

            migrationBuilder.CreateIndex(
                name: "IX_MagnesiumDoses_EntryKey",
                table: "MagnesiumDoses",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_MagnesiumDoses_SupersedesId",
                table: "MagnesiumDoses",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_MagnesiumDoses_TreatedLadleId",
                table: "MagnesiumDoses",
                column: "TreatedLadleId");

            migrationBuilder.CreateIndex(
                name: "IX_PouredMoulds_EntryKey",
                table: "PouredMoulds",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_PouredMoulds_SupersedesId",
                table: "PouredMoulds",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_PouredMoulds_TreatedLadleId",
                table: "PouredMoulds",
                column: "TreatedLadleId");

            migrationBuilder.CreateIndex(
                name: "IX_TestPieces_EntryKey",
                table: "TestPieces",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_TestPieces_SupersedesId",
                table: "TestPieces",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_TestPieces_TreatedLadleId",
                table: "TestPieces",
                column: "TreatedLadleId");

            migrationBuilder.CreateIndex(
                name: "IX_TestResults_EntryKey",
                table: "TestResults",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_TestResults_SupersedesId",
                table: "TestResults",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_TestResults_TestPieceId",
                table: "TestResults",
                column: "TestPieceId");

            migrationBuilder.AddForeignKey(
                name: "FK_PocketCards_Materials_CoverMaterialId",
                table: "PocketCards",
                column: "CoverMaterialId",
                principalTable: "Materials",
                principalColumn: "Id",
                onDelete: ReferentialAction.Restrict);

            migrationBuilder.AddForeignKey(
                name: "FK_PocketCards_Materials_PearliteMaterialId",
                table: "PocketCards",
                column: "PearliteMaterialId",
                principalTable: "Materials",
                principalColumn: "Id",
                onDelete: ReferentialAction.Restrict);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropForeignKey(
                name: "FK_PocketCards_Materials_CoverMaterialId",
                table: "PocketCards");

            migrationBuilder.DropForeignKey(
                name: "FK_PocketCards_Materials_PearliteMaterialId",
                table: "PocketCards");

            migrationBuilder.DropTable(
                name: "Certificates");

            migrationBuilder.DropTable(
                name: "LadleFigures");

            migrationBuilder.DropTable(
                name: "LadleInoculations");

            migrationBuilder.DropTable(
                name: "LadleRests");

            migrationBuilder.DropTable(
                name: "MagnesiumDoses");

            migrationBuilder.DropTable(
                name: "PouredMoulds");

            migrationBuilder.DropTable(
                name: "TestResults");

            migrationBuilder.DropTable(
                name: "TestPieces");

            migrationBuilder.DropColumn(
                name: "LeastMinutesToFloor",
                table: "Taps");

            migrationBuilder.DropColumn(
                name: "MgLeastPercent",
                table: "Taps");

            migrationBuilder.DropColumn(
                name: "MgMostPercent",
                table: "Taps");

            migrationBuilder.DropColumn(
                name: "StartedAt",
                table: "Taps");

            migrationBuilder.DropColumn(
                name: "Checks",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "CoverKg",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "CoverMaterialId",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "HeatLossKPerMinute",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "HouseMinutes",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "InoculationMinutes",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "LargestIronKg",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "LeastPouringC",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "MgFadeMostPercentPerMinute",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "MgRecoveryLeastPercent",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "MgRecoveryMostPercent",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "MouldInoculantKg",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "NeededAlloyKg",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "PearliteKg",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "PearliteMaterialId",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "Process",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "StreamInoculantKg",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "TreatmentLossK",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "CapacityKg",
                table: "Ladles");

            migrationBuilder.DropColumn(
                name: "HasLid",
                table: "Ladles");

            migrationBuilder.DropColumn(
                name: "HeightToDiameter",
                table: "Ladles");

            migrationBuilder.DropColumn(
                name: "HouseMinutes",
                table: "Ladles");

            migrationBuilder.DropColumn(
                name: "InoculationMinutes",
                table: "Ladles");

            migrationBuilder.DropColumn(
                name: "LeastPouringC",
                table: "Ladles");

            migrationBuilder.DropColumn(
                name: "MostTreatmentC",
                table: "Ladles");

            migrationBuilder.DropColumn(
                name: "Preheat",
                table: "Ladles");

            migrationBuilder.DropColumn(
                name: "PreheatSeenAt",
                table: "Ladles");

            migrationBuilder.DropColumn(
                name: "TreatmentLossK",
                table: "Ladles");

            migrationBuilder.DropColumn(
                name: "WireMetresPerMinute",
                table: "Ladles");

            migrationBuilder.DropColumn(
                name: "WireMgGramsPerMetre",
                table: "Ladles");
        }
    }
}
