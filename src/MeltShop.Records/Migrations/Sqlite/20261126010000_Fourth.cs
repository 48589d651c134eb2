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
            migrationBuilder.AddColumn<string>(
                name: "Lot",
                table: "Weighings",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "IsWithdrawn",
                table: "TestPieces",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.AddColumn<string>(
                name: "Moulds",
                table: "TestPieces",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "FromTreatedLadleId",
                table: "Taps",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "GrossKg",
                table: "Taps",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "TareKg",
                table: "Taps",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Lot",
                table: "StockFacts",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "MassUnit",
                table: "Sites",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "TemperatureUnit",
                table: "Sites",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "CoinOnItsWayId",
                table: "Samples",
                type: "INTEGER",
                nullable: true);

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

            migrationBuilder.AddColumn<string>(
                name: "AlloyLot",
                table: "PocketCards",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "CoverLot",
                table: "PocketCards",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "InoculantLot",
                table: "PocketCards",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "MgFadeLeastPercentPerMinute",
                table: "PocketCards",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "PearliteLot",
                table: "PocketCards",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Choice",
                table: "Plans",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AlterColumn<double>(
                name: "MetallicYieldPercent",
                table: "Materials",
                type: "REAL",
                nullable: true,
                oldClrType: typeof(double),
                oldType: "REAL");

            migrationBuilder.AddColumn<double>(
                name: "MgMostPercent",
                table: "MagnesiumDoses",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "CameMgPercent",
                table: "LadleRests",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "InoculatedAt",
                table: "LadleRests",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "LeastMinutesToFloor",
                table: "LadleRests",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "MixedMgLeastPercent",
                table: "LadleRests",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "MixedMgMostPercent",
                table: "LadleRests",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "SampleId",
                table: "LadleRests",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Lot",
                table: "LadleInoculations",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "ColdChargeM3",
                table: "Furnaces",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Consent",
                table: "CastingDecisions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "GradeId",
                table: "CastingDecisions",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "ReMarking",
                table: "CastingDecisions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Seen",
                table: "CastingDecisions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "TestUnit",
                table: "CastingDecisions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "WasSigned",
                table: "CastingDecisions",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.CreateTable(
                name: "ChargeRules",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    NearnessPrice = table.Column<double>(type: "REAL", nullable: true),
                    SlagCostPerTonne = table.Column<double>(type: "REAL", nullable: true),
                    EnergyPricePerKWh = table.Column<double>(type: "REAL", nullable: true),
                    MeltingKWhPerTonne = table.Column<double>(type: "REAL", nullable: true),
                    UseUpBonusPerTonne = table.Column<double>(type: "REAL", nullable: true),
                    BucketM3 = table.Column<double>(type: "REAL", nullable: true),
                    BucketFillings = table.Column<double>(type: "REAL", nullable: true),
                    EntryKey = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<long>(type: "INTEGER", nullable: false),
                    ObservedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    EnteredAt = table.Column<long>(type: "INTEGER", nullable: false),
                    SupersedesId = table.Column<long>(type: "INTEGER", nullable: true),
                    Reason = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ChargeRules", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ChargeRules_ChargeRules_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "ChargeRules",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ChargeRules_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ChargeRules_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "CoinsOnTheirWay",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    HeatId = table.Column<long>(type: "INTEGER", nullable: false),
                    TreatedLadleId = table.Column<long>(type: "INTEGER", nullable: true),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    CoinNumber = table.Column<string>(type: "TEXT", nullable: false),
                    Remarks = table.Column<string>(type: "TEXT", nullable: true),
                    IsLost = table.Column<bool>(type: "INTEGER", nullable: false),
                    EntryKey = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<long>(type: "INTEGER", nullable: false),
                    ObservedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    EnteredAt = table.Column<long>(type: "INTEGER", nullable: false),
                    SupersedesId = table.Column<long>(type: "INTEGER", nullable: true),
                    Reason = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CoinsOnTheirWay", x => x.Id);
                    table.ForeignKey(
                        name: "FK_CoinsOnTheirWay_CoinsOnTheirWay_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "CoinsOnTheirWay",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CoinsOnTheirWay_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CoinsOnTheirWay_Heats_HeatId",
                        column: x => x.HeatId,
                        principalTable: "Heats",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CoinsOnTheirWay_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CoinsOnTheirWay_TreatedLadles_TreatedLadleId",
                        column: x => x.TreatedLadleId,
                        principalTable: "TreatedLadles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "HeatCorrections",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    HeatId = table.Column<long>(type: "INTEGER", nullable: false),
                    GradeId = table.Column<long>(type: "INTEGER", nullable: false),
                    FormerGradeId = table.Column<long>(type: "INTEGER", nullable: false),
                    StartedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    FormerStartedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    HeelKg = table.Column<double>(type: "REAL", nullable: true),
                    FormerHeelKg = table.Column<double>(type: "REAL", nullable: true),
                    EntryKey = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<long>(type: "INTEGER", nullable: false),
                    ObservedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    EnteredAt = table.Column<long>(type: "INTEGER", nullable: false),
                    SupersedesId = table.Column<long>(type: "INTEGER", nullable: true),
                    Reason = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_HeatCorrections", x => x.Id);
                    table.ForeignKey(
                        name: "FK_HeatCorrections_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_HeatCorrections_Grades_FormerGradeId",
                        column: x => x.FormerGradeId,
                        principalTable: "Grades",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_HeatCorrections_Grades_GradeId",
                        column: x => x.GradeId,
                        principalTable: "Grades",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_HeatCorrections_HeatCorrections_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "HeatCorrections",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_HeatCorrections_Heats_HeatId",
                        column: x => x.HeatId,
                        principalTable: "Heats",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_HeatCorrections_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

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
                name: "ReferenceMaterials",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Code = table.Column<string>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Certificate = table.Column<string>(type: "TEXT", nullable: false),
                    IsActive = table.Column<bool>(type: "INTEGER", nullable: false),
                    Version = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ReferenceMaterials", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "SampleFigures",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    SampleId = table.Column<long>(type: "INTEGER", nullable: false),
                    Quantity = table.Column<string>(type: "TEXT", nullable: false),
                    Value = table.Column<double>(type: "REAL", nullable: false),
                    InstrumentText = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SampleFigures", x => x.Id);
                    table.ForeignKey(
                        name: "FK_SampleFigures_Samples_SampleId",
                        column: x => x.SampleId,
                        principalTable: "Samples",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ImportMaps",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    InstrumentId = table.Column<long>(type: "INTEGER", nullable: false),
                    Definition = table.Column<string>(type: "TEXT", nullable: false),
                    IsActive = table.Column<bool>(type: "INTEGER", nullable: false),
                    Version = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ImportMaps", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ImportMaps_Instruments_InstrumentId",
                        column: x => x.InstrumentId,
                        principalTable: "Instruments",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
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

            migrationBuilder.CreateTable(
                name: "CertifiedValues",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ReferenceMaterialId = table.Column<long>(type: "INTEGER", nullable: false),
                    Element = table.Column<string>(type: "TEXT", nullable: false),
                    Percent = table.Column<double>(type: "REAL", nullable: false),
                    PlusMinus = table.Column<double>(type: "REAL", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CertifiedValues", x => x.Id);
                    table.ForeignKey(
                        name: "FK_CertifiedValues_ReferenceMaterials_ReferenceMaterialId",
                        column: x => x.ReferenceMaterialId,
                        principalTable: "ReferenceMaterials",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ControlSamples",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    InstrumentId = table.Column<long>(type: "INTEGER", nullable: false),
                    ReferenceMaterialId = table.Column<long>(type: "INTEGER", nullable: false),
                    Remarks = table.Column<string>(type: "TEXT", nullable: true),
                    EntryKey = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<long>(type: "INTEGER", nullable: false),
                    ObservedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    EnteredAt = table.Column<long>(type: "INTEGER", nullable: false),
                    SupersedesId = table.Column<long>(type: "INTEGER", nullable: true),
                    Reason = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ControlSamples", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ControlSamples_ControlSamples_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "ControlSamples",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ControlSamples_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ControlSamples_Instruments_InstrumentId",
                        column: x => x.InstrumentId,
                        principalTable: "Instruments",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ControlSamples_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ControlSamples_ReferenceMaterials_ReferenceMaterialId",
                        column: x => x.ReferenceMaterialId,
                        principalTable: "ReferenceMaterials",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ImportedFiles",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ImportMapId = table.Column<long>(type: "INTEGER", nullable: true),
                    Way = table.Column<string>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Sha256 = table.Column<string>(type: "TEXT", nullable: false),
                    Bytes = table.Column<long>(type: "INTEGER", nullable: false),
                    Rows = table.Column<int>(type: "INTEGER", nullable: false),
                    NewRows = table.Column<int>(type: "INTEGER", nullable: false),
                    KnownRows = table.Column<int>(type: "INTEGER", nullable: false),
                    RefusedRows = table.Column<int>(type: "INTEGER", nullable: false),
                    Samples = table.Column<int>(type: "INTEGER", nullable: false),
                    Refusals = table.Column<string>(type: "TEXT", nullable: false),
                    EntryKey = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<long>(type: "INTEGER", nullable: false),
                    ObservedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    EnteredAt = table.Column<long>(type: "INTEGER", nullable: false),
                    SupersedesId = table.Column<long>(type: "INTEGER", nullable: true),
                    Reason = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ImportedFiles", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ImportedFiles_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ImportedFiles_ImportMaps_ImportMapId",
                        column: x => x.ImportMapId,
                        principalTable: "ImportMaps",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ImportedFiles_ImportedFiles_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "ImportedFiles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ImportedFiles_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ControlReadings",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ControlSampleId = table.Column<long>(type: "INTEGER", nullable: false),
                    Ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    Element = table.Column<string>(type: "TEXT", nullable: false),
                    Percent = table.Column<double>(type: "REAL", nullable: false),
                    BelowDetection = table.Column<bool>(type: "INTEGER", nullable: false),
                    InstrumentText = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ControlReadings", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ControlReadings_ControlSamples_ControlSampleId",
                        column: x => x.ControlSampleId,
                        principalTable: "ControlSamples",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ImportedChecks",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ImportedFileId = table.Column<long>(type: "INTEGER", nullable: false),
                    ControlSampleId = table.Column<long>(type: "INTEGER", nullable: false),
                    Identity = table.Column<string>(type: "TEXT", nullable: false),
                    Line = table.Column<int>(type: "INTEGER", nullable: false),
                    Text = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ImportedChecks", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ImportedChecks_ControlSamples_ControlSampleId",
                        column: x => x.ControlSampleId,
                        principalTable: "ControlSamples",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ImportedChecks_ImportedFiles_ImportedFileId",
                        column: x => x.ImportedFileId,
                        principalTable: "ImportedFiles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ImportedSamples",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ImportedFileId = table.Column<long>(type: "INTEGER", nullable: false),
                    SampleId = table.Column<long>(type: "INTEGER", nullable: false),
                    Identity = table.Column<string>(type: "TEXT", nullable: false),
                    Line = table.Column<int>(type: "INTEGER", nullable: false),
                    Text = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ImportedSamples", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ImportedSamples_ImportedFiles_ImportedFileId",
                        column: x => x.ImportedFileId,
                        principalTable: "ImportedFiles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ImportedSamples_Samples_SampleId",
                        column: x => x.SampleId,
                        principalTable: "Samples",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Samples_CoinOnItsWayId",
                table: "Samples",
                column: "CoinOnItsWayId");

            migrationBuilder.CreateIndex(
                name: "IX_Samples_InstrumentId_ObservedAt",
                table: "Samples",
                columns: new[] { "InstrumentId", "ObservedAt" });

            migrationBuilder.CreateIndex(
                name: "IX_CertifiedValues_ReferenceMaterialId_Element",
                table: "CertifiedValues",
                columns: new[] { "ReferenceMaterialId", "Element" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ChargeRules_EntryKey",
                table: "ChargeRules",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_ChargeRules_SupersedesId",
                table: "ChargeRules",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_CoinsOnTheirWay_EntryKey",
                table: "CoinsOnTheirWay",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_CoinsOnTheirWay_HeatId",
                table: "CoinsOnTheirWay",
                column: "HeatId");

            migrationBuilder.CreateIndex(
                name: "IX_CoinsOnTheirWay_SupersedesId",
                table: "CoinsOnTheirWay",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ControlReadings_ControlSampleId_Ordinal_Element",
                table: "ControlReadings",
                columns: new[] { "ControlSampleId", "Ordinal", "Element" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ControlSamples_EntryKey",
                table: "ControlSamples",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_ControlSamples_InstrumentId_ObservedAt_Id",
                table: "ControlSamples",
                columns: new[] { "InstrumentId", "ObservedAt", "Id" });

            migrationBuilder.CreateIndex(
                name: "IX_ControlSamples_SupersedesId",
                table: "ControlSamples",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_HeatCorrections_EntryKey",
                table: "HeatCorrections",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_HeatCorrections_HeatId",
                table: "HeatCorrections",
                column: "HeatId");

            migrationBuilder.CreateIndex(
                name: "IX_HeatCorrections_SupersedesId",
                table: "HeatCorrections",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ImportedChecks_ControlSampleId",
                table: "ImportedChecks",
                column: "ControlSampleId");

            migrationBuilder.CreateIndex(
                name: "IX_ImportedChecks_Identity",
                table: "ImportedChecks",
                column: "Identity",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ImportedChecks_ImportedFileId",
                table: "ImportedChecks",
                column: "ImportedFileId");

            migrationBuilder.CreateIndex(
                name: "IX_ImportedFiles_EntryKey",
                table: "ImportedFiles",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_ImportedFiles_Sha256",
                table: "ImportedFiles",
                column: "Sha256");

            migrationBuilder.CreateIndex(
                name: "IX_ImportedFiles_SupersedesId",
                table: "ImportedFiles",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ImportedSamples_Identity",
                table: "ImportedSamples",
                column: "Identity",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ImportedSamples_ImportedFileId",
                table: "ImportedSamples",
                column: "ImportedFileId");

            migrationBuilder.CreateIndex(
                name: "IX_ImportedSamples_SampleId",
                table: "ImportedSamples",
                column: "SampleId");

            migrationBuilder.CreateIndex(
                name: "IX_ImportMaps_Name",
                table: "ImportMaps",
                column: "Name",
                unique: true);

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

            migrationBuilder.CreateIndex(
                name: "IX_ReferenceMaterials_Code",
                table: "ReferenceMaterials",
                column: "Code",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_SampleFigures_SampleId_Quantity",
                table: "SampleFigures",
                columns: new[] { "SampleId", "Quantity" },
                unique: true);

            migrationBuilder.AddForeignKey(
                name: "FK_CastingDecisions_Grades_GradeId",
                table: "CastingDecisions",
                column: "GradeId",
                principalTable: "Grades",
                principalColumn: "Id",
                onDelete: ReferentialAction.Restrict);

            migrationBuilder.AddForeignKey(
                name: "FK_LadleRests_Samples_SampleId",
                table: "LadleRests",
                column: "SampleId",
                principalTable: "Samples",
                principalColumn: "Id",
                onDelete: ReferentialAction.Restrict);

            migrationBuilder.AddForeignKey(
                name: "FK_Samples_CoinsOnTheirWay_CoinOnItsWayId",
                table: "Samples",
                column: "CoinOnItsWayId",
                principalTable: "CoinsOnTheirWay",
                principalColumn: "Id",
                onDelete: ReferentialAction.Restrict);

            migrationBuilder.AddForeignKey(
                name: "FK_Samples_Instruments_InstrumentId",
                table: "Samples",
                column: "InstrumentId",
                principalTable: "Instruments",
                principalColumn: "Id",
                onDelete: ReferentialAction.Restrict);

            migrationBuilder.AddForeignKey(
                name: "FK_Taps_TreatedLadles_FromTreatedLadleId",
                table: "Taps",
                column: "FromTreatedLadleId",
                principalTable: "TreatedLadles",
                principalColumn: "Id",
                onDelete: ReferentialAction.Restrict);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropForeignKey(
                name: "FK_CastingDecisions_Grades_GradeId",
                table: "CastingDecisions");

            migrationBuilder.DropForeignKey(
                name: "FK_LadleRests_Samples_SampleId",
                table: "LadleRests");

            migrationBuilder.DropForeignKey(
                name: "FK_Samples_CoinsOnTheirWay_CoinOnItsWayId",
                table: "Samples");

            migrationBuilder.DropForeignKey(
                name: "FK_Samples_Instruments_InstrumentId",
                table: "Samples");

            migrationBuilder.DropForeignKey(
                name: "FK_Taps_TreatedLadles_FromTreatedLadleId",
                table: "Taps");

            migrationBuilder.DropTable(
                name: "CertifiedValues");

            migrationBuilder.DropTable(
                name: "ChargeRules");

            migrationBuilder.DropTable(
                name: "CoinsOnTheirWay");

            migrationBuilder.DropTable(
                name: "ControlReadings");

            migrationBuilder.DropTable(
                name: "HeatCorrections");

            migrationBuilder.DropTable(
                name: "ImportedChecks");

            migrationBuilder.DropTable(
                name: "ImportedSamples");

            migrationBuilder.DropTable(
                name: "InstrumentElements");

            migrationBuilder.DropTable(
                name: "SampleFigures");

            migrationBuilder.DropTable(
                name: "ControlSamples");

            migrationBuilder.DropTable(
                name: "ImportedFiles");

            migrationBuilder.DropTable(
                name: "ReferenceMaterials");

            migrationBuilder.DropTable(
                name: "ImportMaps");

            migrationBuilder.DropTable(
                name: "Instruments");

            migrationBuilder.DropIndex(
                name: "IX_Samples_CoinOnItsWayId",
                table: "Samples");

            migrationBuilder.DropIndex(
                name: "IX_Samples_InstrumentId_ObservedAt",
                table: "Samples");

            migrationBuilder.DropColumn(
                name: "Lot",
                table: "Weighings");

            migrationBuilder.DropColumn(
                name: "IsWithdrawn",
                table: "TestPieces");

            migrationBuilder.DropColumn(
                name: "Moulds",
                table: "TestPieces");

            migrationBuilder.DropColumn(
                name: "FromTreatedLadleId",
                table: "Taps");

            migrationBuilder.DropColumn(
                name: "GrossKg",
                table: "Taps");

            migrationBuilder.DropColumn(
                name: "TareKg",
                table: "Taps");

            migrationBuilder.DropColumn(
                name: "Lot",
                table: "StockFacts");

            migrationBuilder.DropColumn(
                name: "MassUnit",
                table: "Sites");

            migrationBuilder.DropColumn(
                name: "TemperatureUnit",
                table: "Sites");

            migrationBuilder.DropColumn(
                name: "CoinOnItsWayId",
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

            migrationBuilder.DropColumn(
                name: "AlloyLot",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "CoverLot",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "InoculantLot",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "MgFadeLeastPercentPerMinute",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "PearliteLot",
                table: "PocketCards");

            migrationBuilder.DropColumn(
                name: "Choice",
                table: "Plans");

            migrationBuilder.DropColumn(
                name: "MgMostPercent",
                table: "MagnesiumDoses");

            migrationBuilder.DropColumn(
                name: "CameMgPercent",
                table: "LadleRests");

            migrationBuilder.DropColumn(
                name: "InoculatedAt",
                table: "LadleRests");

            migrationBuilder.DropColumn(
                name: "LeastMinutesToFloor",
                table: "LadleRests");

            migrationBuilder.DropColumn(
                name: "MixedMgLeastPercent",
                table: "LadleRests");

            migrationBuilder.DropColumn(
                name: "MixedMgMostPercent",
                table: "LadleRests");

            migrationBuilder.DropColumn(
                name: "SampleId",
                table: "LadleRests");

            migrationBuilder.DropColumn(
                name: "Lot",
                table: "LadleInoculations");

            migrationBuilder.DropColumn(
                name: "ColdChargeM3",
                table: "Furnaces");

            migrationBuilder.DropColumn(
                name: "Consent",
                table: "CastingDecisions");

            migrationBuilder.DropColumn(
                name: "GradeId",
                table: "CastingDecisions");

            migrationBuilder.DropColumn(
                name: "ReMarking",
                table: "CastingDecisions");

            migrationBuilder.DropColumn(
                name: "Seen",
                table: "CastingDecisions");

            migrationBuilder.DropColumn(
                name: "TestUnit",
                table: "CastingDecisions");

            migrationBuilder.DropColumn(
                name: "WasSigned",
                table: "CastingDecisions");

            migrationBuilder.AlterColumn<double>(
                name: "MetallicYieldPercent",
                table: "Materials",
                type: "REAL",
                nullable: false,
                defaultValue: 0.0,
                oldClrType: typeof(double),
                oldType: "REAL",
                oldNullable: true);
        }
    }
}
