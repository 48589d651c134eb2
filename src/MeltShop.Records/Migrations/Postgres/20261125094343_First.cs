using System;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace MeltShop.Records.Migrations.Postgres
{
    /// <inheritdoc />
    public partial class First : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "ApiKeys",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Name = table.Column<string>(type: "text", nullable: false),
                    Hash = table.Column<string>(type: "text", nullable: false),
                    CreatedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    RevokedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ApiKeys", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "DataProtectionKeys",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    FriendlyName = table.Column<string>(type: "text", nullable: true),
                    Xml = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_DataProtectionKeys", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Entries",
                columns: table => new
                {
                    Key = table.Column<Guid>(type: "uuid", nullable: false),
                    Operation = table.Column<string>(type: "text", nullable: false),
                    PersonId = table.Column<long>(type: "bigint", nullable: false),
                    EnteredAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    Result = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Entries", x => x.Key);
                });

            migrationBuilder.CreateTable(
                name: "Furnaces",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Code = table.Column<string>(type: "text", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false),
                    CapacityKg = table.Column<double>(type: "double precision", nullable: false),
                    PowerKw = table.Column<double>(type: "double precision", nullable: false),
                    IsActive = table.Column<bool>(type: "boolean", nullable: false),
                    Version = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Furnaces", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Grades",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Code = table.Column<string>(type: "text", nullable: false),
                    Family = table.Column<string>(type: "text", nullable: false),
                    Source = table.Column<string>(type: "text", nullable: false),
                    Recipe_TargetMgPercent = table.Column<double>(type: "double precision", nullable: true),
                    Recipe_MgFloorPercent = table.Column<double>(type: "double precision", nullable: true),
                    Recipe_SulphurLeftPercent = table.Column<double>(type: "double precision", nullable: true),
                    Recipe_TreatmentAlloyCode = table.Column<string>(type: "text", nullable: true),
                    Recipe_InoculantCode = table.Column<string>(type: "text", nullable: true),
                    Recipe_InoculantRatePercent = table.Column<double>(type: "double precision", nullable: true),
                    Recipe_MinutesToLastMould = table.Column<double>(type: "double precision", nullable: true),
                    IsActive = table.Column<bool>(type: "boolean", nullable: false),
                    Version = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Grades", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Ladles",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Code = table.Column<string>(type: "text", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false),
                    Process = table.Column<string>(type: "text", nullable: false),
                    FillLimitKg = table.Column<double>(type: "double precision", nullable: false),
                    PocketKg = table.Column<double>(type: "double precision", nullable: false),
                    MgRecoveryPercent = table.Column<double>(type: "double precision", nullable: false),
                    RecoveryTemperatureC = table.Column<double>(type: "double precision", nullable: true),
                    MgFadePercentPerMinute = table.Column<double>(type: "double precision", nullable: false),
                    HeatLossKPerMinute = table.Column<double>(type: "double precision", nullable: false),
                    FiguresSource = table.Column<string>(type: "text", nullable: false),
                    IsActive = table.Column<bool>(type: "boolean", nullable: false),
                    Version = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Ladles", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Materials",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Code = table.Column<string>(type: "text", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false),
                    Kind = table.Column<string>(type: "text", nullable: false),
                    Uses = table.Column<int>(type: "integer", nullable: false),
                    PricePerTonne = table.Column<long>(type: "bigint", nullable: false),
                    StockKg = table.Column<double>(type: "double precision", nullable: true),
                    AnalysisId = table.Column<long>(type: "bigint", nullable: true),
                    MetallicYieldPercent = table.Column<double>(type: "double precision", nullable: false),
                    PieceKg = table.Column<double>(type: "double precision", nullable: true),
                    BulkDensityTonnesPerM3 = table.Column<double>(type: "double precision", nullable: true),
                    MaxSharePercent = table.Column<double>(type: "double precision", nullable: true),
                    Cautions = table.Column<string>(type: "text", nullable: false),
                    IsDemo = table.Column<bool>(type: "boolean", nullable: false),
                    IsActive = table.Column<bool>(type: "boolean", nullable: false),
                    Version = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Materials", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "People",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    DisplayName = table.Column<string>(type: "text", nullable: false),
                    Culture = table.Column<string>(type: "text", nullable: false),
                    IsActive = table.Column<bool>(type: "boolean", nullable: false),
                    IsDemo = table.Column<bool>(type: "boolean", nullable: false),
                    UserName = table.Column<string>(type: "character varying(256)", maxLength: 256, nullable: true),
                    NormalizedUserName = table.Column<string>(type: "character varying(256)", maxLength: 256, nullable: true),
                    Email = table.Column<string>(type: "character varying(256)", maxLength: 256, nullable: true),
                    NormalizedEmail = table.Column<string>(type: "character varying(256)", maxLength: 256, nullable: true),
                    EmailConfirmed = table.Column<bool>(type: "boolean", nullable: false),
                    PasswordHash = table.Column<string>(type: "text", nullable: true),
                    SecurityStamp = table.Column<string>(type: "text", nullable: true),
                    ConcurrencyStamp = table.Column<string>(type: "text", nullable: true),
                    PhoneNumber = table.Column<string>(type: "text", nullable: true),
                    PhoneNumberConfirmed = table.Column<bool>(type: "boolean", nullable: false),
                    TwoFactorEnabled = table.Column<bool>(type: "boolean", nullable: false),
                    LockoutEnd = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    LockoutEnabled = table.Column<bool>(type: "boolean", nullable: false),
                    AccessFailedCount = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_People", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Roles",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Name = table.Column<string>(type: "character varying(256)", maxLength: 256, nullable: true),
                    NormalizedName = table.Column<string>(type: "character varying(256)", maxLength: 256, nullable: true),
                    ConcurrencyStamp = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Roles", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Sites",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Code = table.Column<string>(type: "text", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false),
                    TimeZone = table.Column<string>(type: "text", nullable: false),
                    Currency = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Sites", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "TrailHeads",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false),
                    Number = table.Column<long>(type: "bigint", nullable: false),
                    Hash = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_TrailHeads", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "TrailRows",
                columns: table => new
                {
                    Number = table.Column<long>(type: "bigint", nullable: false),
                    EntryKey = table.Column<Guid>(type: "uuid", nullable: false),
                    Operation = table.Column<string>(type: "text", nullable: false),
                    PersonId = table.Column<long>(type: "bigint", nullable: false),
                    PersonName = table.Column<string>(type: "text", nullable: false),
                    Station = table.Column<string>(type: "text", nullable: false),
                    EnteredAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    Payload = table.Column<string>(type: "text", nullable: false),
                    PreviousHash = table.Column<string>(type: "text", nullable: false),
                    Hash = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_TrailRows", x => x.Number);
                });

            migrationBuilder.CreateTable(
                name: "GradeWindows",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    GradeId = table.Column<long>(type: "bigint", nullable: false),
                    Stage = table.Column<string>(type: "text", nullable: false),
                    Quantity = table.Column<string>(type: "text", nullable: false),
                    Least = table.Column<double>(type: "double precision", nullable: true),
                    Aim = table.Column<double>(type: "double precision", nullable: true),
                    Most = table.Column<double>(type: "double precision", nullable: true),
                    Margin = table.Column<double>(type: "double precision", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_GradeWindows", x => x.Id);
                    table.ForeignKey(
                        name: "FK_GradeWindows_Grades_GradeId",
                        column: x => x.GradeId,
                        principalTable: "Grades",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Drafts",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Subject = table.Column<string>(type: "text", nullable: false),
                    Field = table.Column<string>(type: "text", nullable: false),
                    Text = table.Column<string>(type: "text", nullable: false),
                    PersonId = table.Column<long>(type: "bigint", nullable: false),
                    ChangedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    Version = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Drafts", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Drafts_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "MaterialAnalyses",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    MaterialId = table.Column<long>(type: "bigint", nullable: false),
                    Source = table.Column<string>(type: "text", nullable: false),
                    SourceKind = table.Column<string>(type: "text", nullable: false),
                    EntryKey = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<long>(type: "bigint", nullable: false),
                    ObservedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    EnteredAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    SupersedesId = table.Column<long>(type: "bigint", nullable: true),
                    Reason = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_MaterialAnalyses", x => x.Id);
                    table.ForeignKey(
                        name: "FK_MaterialAnalyses_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_MaterialAnalyses_MaterialAnalyses_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "MaterialAnalyses",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_MaterialAnalyses_Materials_MaterialId",
                        column: x => x.MaterialId,
                        principalTable: "Materials",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_MaterialAnalyses_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "PersonClaims",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    UserId = table.Column<long>(type: "bigint", nullable: false),
                    ClaimType = table.Column<string>(type: "text", nullable: true),
                    ClaimValue = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PersonClaims", x => x.Id);
                    table.ForeignKey(
                        name: "FK_PersonClaims_People_UserId",
                        column: x => x.UserId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "PersonLogins",
                columns: table => new
                {
                    LoginProvider = table.Column<string>(type: "text", nullable: false),
                    ProviderKey = table.Column<string>(type: "text", nullable: false),
                    ProviderDisplayName = table.Column<string>(type: "text", nullable: true),
                    UserId = table.Column<long>(type: "bigint", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PersonLogins", x => new { x.LoginProvider, x.ProviderKey });
                    table.ForeignKey(
                        name: "FK_PersonLogins_People_UserId",
                        column: x => x.UserId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "PersonTokens",
                columns: table => new
                {
                    UserId = table.Column<long>(type: "bigint", nullable: false),
                    LoginProvider = table.Column<string>(type: "text", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false),
                    Value = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PersonTokens", x => new { x.UserId, x.LoginProvider, x.Name });
                    table.ForeignKey(
                        name: "FK_PersonTokens_People_UserId",
                        column: x => x.UserId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "Plans",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    FurnaceId = table.Column<long>(type: "bigint", nullable: false),
                    GradeId = table.Column<long>(type: "bigint", nullable: false),
                    MeltKg = table.Column<double>(type: "double precision", nullable: false),
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
                    table.PrimaryKey("PK_Plans", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Plans_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Plans_Furnaces_FurnaceId",
                        column: x => x.FurnaceId,
                        principalTable: "Furnaces",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Plans_Grades_GradeId",
                        column: x => x.GradeId,
                        principalTable: "Grades",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Plans_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Plans_Plans_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Prices",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    MaterialId = table.Column<long>(type: "bigint", nullable: false),
                    PricePerTonne = table.Column<long>(type: "bigint", nullable: false),
                    EntryKey = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<long>(type: "bigint", nullable: false),
                    ObservedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    EnteredAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    SupersedesId = table.Column<long>(type: "bigint", nullable: true),
                    Reason = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Prices", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Prices_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Prices_Materials_MaterialId",
                        column: x => x.MaterialId,
                        principalTable: "Materials",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Prices_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Prices_Prices_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "Prices",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "PersonRoles",
                columns: table => new
                {
                    UserId = table.Column<long>(type: "bigint", nullable: false),
                    RoleId = table.Column<long>(type: "bigint", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PersonRoles", x => new { x.UserId, x.RoleId });
                    table.ForeignKey(
                        name: "FK_PersonRoles_People_UserId",
                        column: x => x.UserId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "FK_PersonRoles_Roles_RoleId",
                        column: x => x.RoleId,
                        principalTable: "Roles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "RoleClaims",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    RoleId = table.Column<long>(type: "bigint", nullable: false),
                    ClaimType = table.Column<string>(type: "text", nullable: true),
                    ClaimValue = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_RoleClaims", x => x.Id);
                    table.ForeignKey(
                        name: "FK_RoleClaims_Roles_RoleId",
                        column: x => x.RoleId,
                        principalTable: "Roles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "HeatCounters",
                columns: table => new
                {
                    SiteId = table.Column<long>(type: "bigint", nullable: false),
                    Year = table.Column<int>(type: "integer", nullable: false),
                    Last = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_HeatCounters", x => new { x.SiteId, x.Year });
                    table.ForeignKey(
                        name: "FK_HeatCounters_Sites_SiteId",
                        column: x => x.SiteId,
                        principalTable: "Sites",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "MaterialPercents",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    AnalysisId = table.Column<long>(type: "bigint", nullable: false),
                    Element = table.Column<string>(type: "text", nullable: false),
                    Percent = table.Column<double>(type: "double precision", nullable: false),
                    Spread = table.Column<double>(type: "double precision", nullable: true),
                    RecoveryPercent = table.Column<double>(type: "double precision", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_MaterialPercents", x => x.Id);
                    table.ForeignKey(
                        name: "FK_MaterialPercents_MaterialAnalyses_AnalysisId",
                        column: x => x.AnalysisId,
                        principalTable: "MaterialAnalyses",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Heats",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Number = table.Column<string>(type: "text", nullable: false),
                    SiteId = table.Column<long>(type: "bigint", nullable: false),
                    FurnaceId = table.Column<long>(type: "bigint", nullable: false),
                    GradeId = table.Column<long>(type: "bigint", nullable: false),
                    PlanId = table.Column<long>(type: "bigint", nullable: false),
                    State = table.Column<string>(type: "text", nullable: false),
                    StartedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    ClosedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    HeelKg = table.Column<double>(type: "double precision", nullable: false),
                    Version = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Heats", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Heats_Furnaces_FurnaceId",
                        column: x => x.FurnaceId,
                        principalTable: "Furnaces",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Heats_Grades_GradeId",
                        column: x => x.GradeId,
                        principalTable: "Grades",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Heats_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Heats_Sites_SiteId",
                        column: x => x.SiteId,
                        principalTable: "Sites",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "FurnaceMetals",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    FurnaceId = table.Column<long>(type: "bigint", nullable: false),
                    HeatId = table.Column<long>(type: "bigint", nullable: true),
                    Kind = table.Column<string>(type: "text", nullable: false),
                    Kg = table.Column<double>(type: "double precision", nullable: false),
                    EntryKey = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<long>(type: "bigint", nullable: false),
                    ObservedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    EnteredAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    SupersedesId = table.Column<long>(type: "bigint", nullable: true),
                    Reason = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_FurnaceMetals", x => x.Id);
                    table.ForeignKey(
                        name: "FK_FurnaceMetals_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_FurnaceMetals_FurnaceMetals_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "FurnaceMetals",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_FurnaceMetals_Furnaces_FurnaceId",
                        column: x => x.FurnaceId,
                        principalTable: "Furnaces",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_FurnaceMetals_Heats_HeatId",
                        column: x => x.HeatId,
                        principalTable: "Heats",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_FurnaceMetals_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "StockFacts",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    MaterialId = table.Column<long>(type: "bigint", nullable: false),
                    Kind = table.Column<string>(type: "text", nullable: false),
                    Kg = table.Column<double>(type: "double precision", nullable: false),
                    HeatId = table.Column<long>(type: "bigint", nullable: true),
                    EntryKey = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<long>(type: "bigint", nullable: false),
                    ObservedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    EnteredAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    SupersedesId = table.Column<long>(type: "bigint", nullable: true),
                    Reason = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_StockFacts", x => x.Id);
                    table.ForeignKey(
                        name: "FK_StockFacts_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_StockFacts_Heats_HeatId",
                        column: x => x.HeatId,
                        principalTable: "Heats",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_StockFacts_Materials_MaterialId",
                        column: x => x.MaterialId,
                        principalTable: "Materials",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_StockFacts_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_StockFacts_StockFacts_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "StockFacts",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "TreatedLadles",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    HeatId = table.Column<long>(type: "bigint", nullable: false),
                    LadleId = table.Column<long>(type: "bigint", nullable: false),
                    Ordinal = table.Column<int>(type: "integer", nullable: false),
                    State = table.Column<string>(type: "text", nullable: false),
                    ReactionEndedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    Version = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_TreatedLadles", x => x.Id);
                    table.ForeignKey(
                        name: "FK_TreatedLadles_Heats_HeatId",
                        column: x => x.HeatId,
                        principalTable: "Heats",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_TreatedLadles_Ladles_LadleId",
                        column: x => x.LadleId,
                        principalTable: "Ladles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Weighings",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    HeatId = table.Column<long>(type: "bigint", nullable: false),
                    MaterialId = table.Column<long>(type: "bigint", nullable: false),
                    Kg = table.Column<double>(type: "double precision", nullable: false),
                    IntoBath = table.Column<bool>(type: "boolean", nullable: false),
                    EntryKey = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<long>(type: "bigint", nullable: false),
                    ObservedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    EnteredAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    SupersedesId = table.Column<long>(type: "bigint", nullable: true),
                    Reason = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Weighings", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Weighings_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Weighings_Heats_HeatId",
                        column: x => x.HeatId,
                        principalTable: "Heats",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Weighings_Materials_MaterialId",
                        column: x => x.MaterialId,
                        principalTable: "Materials",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Weighings_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Weighings_Weighings_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "Weighings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "PocketCards",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    TreatedLadleId = table.Column<long>(type: "bigint", nullable: false),
                    PlannedKg = table.Column<double>(type: "double precision", nullable: false),
                    TemperatureC = table.Column<double>(type: "double precision", nullable: false),
                    BaseSulphurPercent = table.Column<double>(type: "double precision", nullable: true),
                    TargetMgPercent = table.Column<double>(type: "double precision", nullable: true),
                    MgFloorPercent = table.Column<double>(type: "double precision", nullable: true),
                    MinutesToLastMould = table.Column<double>(type: "double precision", nullable: true),
                    AlloyMaterialId = table.Column<long>(type: "bigint", nullable: true),
                    AlloyKg = table.Column<double>(type: "double precision", nullable: true),
                    InoculantMaterialId = table.Column<long>(type: "bigint", nullable: false),
                    InoculantKg = table.Column<double>(type: "double precision", nullable: false),
                    StopWeightKg = table.Column<double>(type: "double precision", nullable: false),
                    Problem = table.Column<string>(type: "text", nullable: true),
                    Answer = table.Column<string>(type: "text", nullable: true),
                    Versions = table.Column<string>(type: "text", nullable: false),
                    EntryKey = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<long>(type: "bigint", nullable: false),
                    ObservedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    EnteredAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    SupersedesId = table.Column<long>(type: "bigint", nullable: true),
                    Reason = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PocketCards", x => x.Id);
                    table.ForeignKey(
                        name: "FK_PocketCards_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_PocketCards_Materials_AlloyMaterialId",
                        column: x => x.AlloyMaterialId,
                        principalTable: "Materials",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_PocketCards_Materials_InoculantMaterialId",
                        column: x => x.InoculantMaterialId,
                        principalTable: "Materials",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_PocketCards_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_PocketCards_PocketCards_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "PocketCards",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_PocketCards_TreatedLadles_TreatedLadleId",
                        column: x => x.TreatedLadleId,
                        principalTable: "TreatedLadles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Samples",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    HeatId = table.Column<long>(type: "bigint", nullable: false),
                    TreatedLadleId = table.Column<long>(type: "bigint", nullable: true),
                    Kind = table.Column<string>(type: "text", nullable: false),
                    CoinNumber = table.Column<string>(type: "text", nullable: true),
                    Remarks = table.Column<string>(type: "text", nullable: true),
                    EntryKey = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<long>(type: "bigint", nullable: false),
                    ObservedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    EnteredAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    SupersedesId = table.Column<long>(type: "bigint", nullable: true),
                    Reason = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Samples", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Samples_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Samples_Heats_HeatId",
                        column: x => x.HeatId,
                        principalTable: "Heats",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Samples_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Samples_Samples_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "Samples",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Samples_TreatedLadles_TreatedLadleId",
                        column: x => x.TreatedLadleId,
                        principalTable: "TreatedLadles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Taps",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    TreatedLadleId = table.Column<long>(type: "bigint", nullable: false),
                    HeatId = table.Column<long>(type: "bigint", nullable: false),
                    Kg = table.Column<double>(type: "double precision", nullable: false),
                    TemperatureC = table.Column<double>(type: "double precision", nullable: true),
                    MgAfterTreatmentPercent = table.Column<double>(type: "double precision", nullable: true),
                    MinutesToFloor = table.Column<double>(type: "double precision", nullable: true),
                    EntryKey = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<long>(type: "bigint", nullable: false),
                    ObservedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    EnteredAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    SupersedesId = table.Column<long>(type: "bigint", nullable: true),
                    Reason = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Taps", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Taps_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Taps_Heats_HeatId",
                        column: x => x.HeatId,
                        principalTable: "Heats",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Taps_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Taps_Taps_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "Taps",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Taps_TreatedLadles_TreatedLadleId",
                        column: x => x.TreatedLadleId,
                        principalTable: "TreatedLadles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Temperatures",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    HeatId = table.Column<long>(type: "bigint", nullable: false),
                    TemperatureC = table.Column<double>(type: "double precision", nullable: false),
                    TreatedLadleId = table.Column<long>(type: "bigint", nullable: true),
                    EntryKey = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<long>(type: "bigint", nullable: false),
                    ObservedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    EnteredAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    SupersedesId = table.Column<long>(type: "bigint", nullable: true),
                    Reason = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Temperatures", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Temperatures_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Temperatures_Heats_HeatId",
                        column: x => x.HeatId,
                        principalTable: "Heats",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Temperatures_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Temperatures_Temperatures_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "Temperatures",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Temperatures_TreatedLadles_TreatedLadleId",
                        column: x => x.TreatedLadleId,
                        principalTable: "TreatedLadles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "BurnDecisions",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    SampleId = table.Column<long>(type: "bigint", nullable: false),
                    Ordinal = table.Column<int>(type: "integer", nullable: false),
                    SetAside = table.Column<bool>(type: "boolean", nullable: false),
                    EntryKey = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<long>(type: "bigint", nullable: false),
                    ObservedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    EnteredAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    SupersedesId = table.Column<long>(type: "bigint", nullable: true),
                    Reason = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_BurnDecisions", x => x.Id);
                    table.ForeignKey(
                        name: "FK_BurnDecisions_BurnDecisions_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "BurnDecisions",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_BurnDecisions_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_BurnDecisions_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_BurnDecisions_Samples_SampleId",
                        column: x => x.SampleId,
                        principalTable: "Samples",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Burns",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    SampleId = table.Column<long>(type: "bigint", nullable: false),
                    Ordinal = table.Column<int>(type: "integer", nullable: false),
                    SetAside = table.Column<bool>(type: "boolean", nullable: false),
                    SetAsideReason = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Burns", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Burns_Samples_SampleId",
                        column: x => x.SampleId,
                        principalTable: "Samples",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "CastingDecisions",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    TreatedLadleId = table.Column<long>(type: "bigint", nullable: false),
                    Verdict = table.Column<string>(type: "text", nullable: false),
                    SampleId = table.Column<long>(type: "bigint", nullable: true),
                    EntryKey = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<long>(type: "bigint", nullable: false),
                    ObservedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    EnteredAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    SupersedesId = table.Column<long>(type: "bigint", nullable: true),
                    Reason = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CastingDecisions", x => x.Id);
                    table.ForeignKey(
                        name: "FK_CastingDecisions_CastingDecisions_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "CastingDecisions",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CastingDecisions_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CastingDecisions_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CastingDecisions_Samples_SampleId",
                        column: x => x.SampleId,
                        principalTable: "Samples",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CastingDecisions_TreatedLadles_TreatedLadleId",
                        column: x => x.TreatedLadleId,
                        principalTable: "TreatedLadles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Heels",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    FurnaceId = table.Column<long>(type: "bigint", nullable: false),
                    FromHeatId = table.Column<long>(type: "bigint", nullable: true),
                    Kg = table.Column<double>(type: "double precision", nullable: false),
                    SampleId = table.Column<long>(type: "bigint", nullable: true),
                    EntryKey = table.Column<Guid>(type: "uuid", nullable: false),
                    PersonId = table.Column<long>(type: "bigint", nullable: false),
                    ObservedAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    EnteredAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    SupersedesId = table.Column<long>(type: "bigint", nullable: true),
                    Reason = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Heels", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Heels_Entries_EntryKey",
                        column: x => x.EntryKey,
                        principalTable: "Entries",
                        principalColumn: "Key",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Heels_Furnaces_FurnaceId",
                        column: x => x.FurnaceId,
                        principalTable: "Furnaces",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Heels_Heats_FromHeatId",
                        column: x => x.FromHeatId,
                        principalTable: "Heats",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Heels_Heels_SupersedesId",
                        column: x => x.SupersedesId,
                        principalTable: "Heels",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Heels_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Heels_Samples_SampleId",
                        column: x => x.SampleId,
                        principalTable: "Samples",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "SampleMeans",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    SampleId = table.Column<long>(type: "bigint", nullable: false),
                    Element = table.Column<string>(type: "text", nullable: false),
                    Percent = table.Column<double>(type: "double precision", nullable: false),
                    Count = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SampleMeans", x => x.Id);
                    table.ForeignKey(
                        name: "FK_SampleMeans_Samples_SampleId",
                        column: x => x.SampleId,
                        principalTable: "Samples",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Readings",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    BurnId = table.Column<long>(type: "bigint", nullable: false),
                    Element = table.Column<string>(type: "text", nullable: false),
                    Percent = table.Column<double>(type: "double precision", nullable: false),
                    BelowDetection = table.Column<bool>(type: "boolean", nullable: false),
                    InstrumentText = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Readings", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Readings_Burns_BurnId",
                        column: x => x.BurnId,
                        principalTable: "Burns",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "HeelPercents",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    HeelId = table.Column<long>(type: "bigint", nullable: false),
                    Element = table.Column<string>(type: "text", nullable: false),
                    Percent = table.Column<double>(type: "double precision", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_HeelPercents", x => x.Id);
                    table.ForeignKey(
                        name: "FK_HeelPercents_Heels_HeelId",
                        column: x => x.HeelId,
                        principalTable: "Heels",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.InsertData(
                table: "TrailHeads",
                columns: new[] { "Id", "Hash", "Number" },
                values: new object[] { 1, "0000000000000000000000000000000000000000000000000000000000000000", 0L });

            migrationBuilder.CreateIndex(
                name: "IX_ApiKeys_Hash",
                table: "ApiKeys",
                column: "Hash",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_BurnDecisions_EntryKey",
                table: "BurnDecisions",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_BurnDecisions_SampleId",
                table: "BurnDecisions",
                column: "SampleId");

            migrationBuilder.CreateIndex(
                name: "IX_BurnDecisions_SupersedesId",
                table: "BurnDecisions",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Burns_SampleId_Ordinal",
                table: "Burns",
                columns: new[] { "SampleId", "Ordinal" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_CastingDecisions_EntryKey",
                table: "CastingDecisions",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_CastingDecisions_SupersedesId",
                table: "CastingDecisions",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_CastingDecisions_TreatedLadleId",
                table: "CastingDecisions",
                column: "TreatedLadleId");

            migrationBuilder.CreateIndex(
                name: "IX_Drafts_Subject_Field",
                table: "Drafts",
                columns: new[] { "Subject", "Field" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_FurnaceMetals_EntryKey",
                table: "FurnaceMetals",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_FurnaceMetals_FurnaceId",
                table: "FurnaceMetals",
                column: "FurnaceId");

            migrationBuilder.CreateIndex(
                name: "IX_FurnaceMetals_HeatId",
                table: "FurnaceMetals",
                column: "HeatId");

            migrationBuilder.CreateIndex(
                name: "IX_FurnaceMetals_SupersedesId",
                table: "FurnaceMetals",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Furnaces_Code",
                table: "Furnaces",
                column: "Code",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Grades_Code",
                table: "Grades",
                column: "Code",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_GradeWindows_GradeId_Stage_Quantity",
                table: "GradeWindows",
                columns: new[] { "GradeId", "Stage", "Quantity" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Heats_FurnaceId_StartedAt_Id",
                table: "Heats",
                columns: new[] { "FurnaceId", "StartedAt", "Id" });

            migrationBuilder.CreateIndex(
                name: "IX_Heats_GradeId_StartedAt_Id",
                table: "Heats",
                columns: new[] { "GradeId", "StartedAt", "Id" });

            migrationBuilder.CreateIndex(
                name: "IX_Heats_InTheFurnace",
                table: "Heats",
                column: "FurnaceId",
                unique: true,
                filter: "\"State\" IN ('Charging', 'Bath', 'Tapping')");

            migrationBuilder.CreateIndex(
                name: "IX_Heats_Number",
                table: "Heats",
                column: "Number",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Heats_PlanId",
                table: "Heats",
                column: "PlanId");

            migrationBuilder.CreateIndex(
                name: "IX_Heats_StartedAt_Id",
                table: "Heats",
                columns: new[] { "StartedAt", "Id" });

            migrationBuilder.CreateIndex(
                name: "IX_Heats_State_StartedAt_Id",
                table: "Heats",
                columns: new[] { "State", "StartedAt", "Id" });

            migrationBuilder.CreateIndex(
                name: "IX_HeelPercents_HeelId_Element",
                table: "HeelPercents",
                columns: new[] { "HeelId", "Element" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Heels_EntryKey",
                table: "Heels",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_Heels_FromHeatId",
                table: "Heels",
                column: "FromHeatId");

            migrationBuilder.CreateIndex(
                name: "IX_Heels_FurnaceId_Id",
                table: "Heels",
                columns: new[] { "FurnaceId", "Id" });

            migrationBuilder.CreateIndex(
                name: "IX_Heels_SupersedesId",
                table: "Heels",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Ladles_Code",
                table: "Ladles",
                column: "Code",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_MaterialAnalyses_EntryKey",
                table: "MaterialAnalyses",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_MaterialAnalyses_MaterialId",
                table: "MaterialAnalyses",
                column: "MaterialId");

            migrationBuilder.CreateIndex(
                name: "IX_MaterialAnalyses_SupersedesId",
                table: "MaterialAnalyses",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_MaterialPercents_AnalysisId_Element",
                table: "MaterialPercents",
                columns: new[] { "AnalysisId", "Element" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Materials_Code",
                table: "Materials",
                column: "Code",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "EmailIndex",
                table: "People",
                column: "NormalizedEmail");

            migrationBuilder.CreateIndex(
                name: "UserNameIndex",
                table: "People",
                column: "NormalizedUserName",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Plans_EntryKey",
                table: "Plans",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_Plans_SupersedesId",
                table: "Plans",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_PocketCards_EntryKey",
                table: "PocketCards",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_PocketCards_SupersedesId",
                table: "PocketCards",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_PocketCards_TreatedLadleId",
                table: "PocketCards",
                column: "TreatedLadleId");

            migrationBuilder.CreateIndex(
                name: "IX_Prices_EntryKey",
                table: "Prices",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_Prices_MaterialId",
                table: "Prices",
                column: "MaterialId");

            migrationBuilder.CreateIndex(
                name: "IX_Prices_SupersedesId",
                table: "Prices",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Readings_BurnId_Element",
                table: "Readings",
                columns: new[] { "BurnId", "Element" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "RoleNameIndex",
                table: "Roles",
                column: "NormalizedName",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_SampleMeans_SampleId_Element",
                table: "SampleMeans",
                columns: new[] { "SampleId", "Element" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Samples_EntryKey",
                table: "Samples",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_Samples_HeatId",
                table: "Samples",
                column: "HeatId");

            migrationBuilder.CreateIndex(
                name: "IX_Samples_SupersedesId",
                table: "Samples",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Samples_TreatedLadleId",
                table: "Samples",
                column: "TreatedLadleId");

            migrationBuilder.CreateIndex(
                name: "IX_Sites_Code",
                table: "Sites",
                column: "Code",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_StockFacts_EntryKey",
                table: "StockFacts",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_StockFacts_HeatId",
                table: "StockFacts",
                column: "HeatId");

            migrationBuilder.CreateIndex(
                name: "IX_StockFacts_MaterialId",
                table: "StockFacts",
                column: "MaterialId");

            migrationBuilder.CreateIndex(
                name: "IX_StockFacts_SupersedesId",
                table: "StockFacts",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Taps_EntryKey",
                table: "Taps",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_Taps_HeatId",
                table: "Taps",
                column: "HeatId");

            migrationBuilder.CreateIndex(
                name: "IX_Taps_SupersedesId",
                table: "Taps",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Taps_TreatedLadleId",
                table: "Taps",
                column: "TreatedLadleId");

            migrationBuilder.CreateIndex(
                name: "IX_Temperatures_EntryKey",
                table: "Temperatures",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_Temperatures_HeatId",
                table: "Temperatures",
                column: "HeatId");

            migrationBuilder.CreateIndex(
                name: "IX_Temperatures_SupersedesId",
                table: "Temperatures",
                column: "SupersedesId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_TrailRows_EntryKey",
                table: "TrailRows",
                column: "EntryKey",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_TreatedLadles_HeatId_Ordinal",
                table: "TreatedLadles",
                columns: new[] { "HeatId", "Ordinal" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_TreatedLadles_State_Id",
                table: "TreatedLadles",
                columns: new[] { "State", "Id" });

            migrationBuilder.CreateIndex(
                name: "IX_Weighings_EntryKey",
                table: "Weighings",
                column: "EntryKey");

            migrationBuilder.CreateIndex(
                name: "IX_Weighings_HeatId",
                table: "Weighings",
                column: "HeatId");

            migrationBuilder.CreateIndex(
                name: "IX_Weighings_SupersedesId",
                table: "Weighings",
                column: "SupersedesId",
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "ApiKeys");

            migrationBuilder.DropTable(
                name: "BurnDecisions");

            migrationBuilder.DropTable(
                name: "CastingDecisions");

            migrationBuilder.DropTable(
                name: "DataProtectionKeys");

            migrationBuilder.DropTable(
                name: "Drafts");

            migrationBuilder.DropTable(
                name: "FurnaceMetals");

            migrationBuilder.DropTable(
                name: "GradeWindows");

            migrationBuilder.DropTable(
                name: "HeatCounters");

            migrationBuilder.DropTable(
                name: "HeelPercents");

            migrationBuilder.DropTable(
                name: "MaterialPercents");

            migrationBuilder.DropTable(
                name: "PersonClaims");

            migrationBuilder.DropTable(
                name: "PersonLogins");

            migrationBuilder.DropTable(
                name: "PersonRoles");

            migrationBuilder.DropTable(
                name: "PersonTokens");

            migrationBuilder.DropTable(
                name: "PocketCards");

            migrationBuilder.DropTable(
                name: "Prices");

            migrationBuilder.DropTable(
                name: "Readings");

            migrationBuilder.DropTable(
                name: "RoleClaims");

            migrationBuilder.DropTable(
                name: "SampleMeans");

            migrationBuilder.DropTable(
                name: "StockFacts");

            migrationBuilder.DropTable(
                name: "Taps");

            migrationBuilder.DropTable(
                name: "Temperatures");

            migrationBuilder.DropTable(
                name: "TrailHeads");

            migrationBuilder.DropTable(
                name: "TrailRows");

            migrationBuilder.DropTable(
                name: "Weighings");

            migrationBuilder.DropTable(
                name: "Heels");

            migrationBuilder.DropTable(
                name: "MaterialAnalyses");

            migrationBuilder.DropTable(
                name: "Burns");

            migrationBuilder.DropTable(
                name: "Roles");

            migrationBuilder.DropTable(
                name: "Materials");

            migrationBuilder.DropTable(
                name: "Samples");

            migrationBuilder.DropTable(
                name: "TreatedLadles");

            migrationBuilder.DropTable(
                name: "Heats");

            migrationBuilder.DropTable(
                name: "Ladles");

            migrationBuilder.DropTable(
                name: "Plans");

            migrationBuilder.DropTable(
                name: "Sites");

            migrationBuilder.DropTable(
                name: "Entries");

            migrationBuilder.DropTable(
                name: "Furnaces");

            migrationBuilder.DropTable(
                name: "Grades");

            migrationBuilder.DropTable(
                name: "People");
        }
    }
}
