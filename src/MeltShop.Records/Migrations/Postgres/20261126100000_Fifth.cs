using System;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace MeltShop.Records.Migrations.Postgres
{
    /// <inheritdoc />
    public partial class Fifth : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "CastingOrders",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Number = table.Column<string>(type: "text", nullable: false),
                    Casting = table.Column<string>(type: "text", nullable: false),
                    GradeId = table.Column<long>(type: "bigint", nullable: false),
                    WallMm = table.Column<double>(type: "double precision", nullable: false),
                    CastingKg = table.Column<double>(type: "double precision", nullable: false),
                    MouldYieldPercent = table.Column<double>(type: "double precision", nullable: false),
                    Pieces = table.Column<int>(type: "integer", nullable: false),
                    PiecesPoured = table.Column<int>(type: "integer", nullable: false),
                    DueOn = table.Column<string>(type: "text", nullable: false),
                    State = table.Column<string>(type: "text", nullable: false),
                    Version = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CastingOrders", x => x.Id);
                    table.ForeignKey(
                        name: "FK_CastingOrders_Grades_GradeId",
                        column: x => x.GradeId,
                        principalTable: "Grades",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_CastingOrders_Number",
                table: "CastingOrders",
                column: "Number",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_CastingOrders_State_DueOn",
                table: "CastingOrders",
                columns: new[] { "State", "DueOn" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "CastingOrders");
        }
    }
}
