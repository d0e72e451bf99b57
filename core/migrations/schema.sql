-- The schema after all steps; compared by a test.
CREATE TRIGGER change_is_never_altered BEFORE UPDATE ON change
BEGIN SELECT RAISE(ABORT, 'the log is never altered'); END;
CREATE TRIGGER change_is_never_deleted BEFORE DELETE ON change
BEGIN SELECT RAISE(ABORT, 'the log is never altered'); END;
CREATE TABLE anchor_point (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "name" TEXT,
    "height_m" REAL,
    "height_se_m" REAL,
    "diameter_cm" REAL,
    "diameter_read" TEXT,
    "parent_diameter_cm" REAL,
    "from_union_cm" REAL,
    "limb_angle_deg" REAL,
    "limb_bearing_deg" REAL,
    "limb_length_m" REAL,
    "union" TEXT,
    "state" TEXT,
    "load_test" TEXT,
    "note" TEXT
) STRICT;
CREATE TABLE change (
    seq INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE,
    hlc TEXT NOT NULL,
    device TEXT NOT NULL,
    person TEXT NOT NULL,
    edit TEXT NOT NULL,
    site TEXT,
    noun TEXT NOT NULL,
    record TEXT NOT NULL,
    field TEXT NOT NULL,
    value TEXT NOT NULL,
    replaces TEXT NOT NULL
) STRICT;
CREATE TABLE climb_plan (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "anchor" TEXT,
    "system" TEXT,
    "ascent_side_deg" REAL,
    "limbs" TEXT,
    "climber" TEXT,
    "second" TEXT,
    "spurs" INTEGER,
    "open_system" INTEGER,
    "stopper" INTEGER
) STRICT;
CREATE TABLE clock (only INTEGER PRIMARY KEY CHECK (only = 1), hlc TEXT NOT NULL) STRICT;
CREATE TABLE defect_code (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "name" TEXT,
    "kind" TEXT,
    "parts" TEXT,
    "grade_1" TEXT,
    "grade_2" TEXT,
    "grade_3" TEXT,
    "stops_from_grade" INTEGER,
    "retired" INTEGER,
    "order" INTEGER
) STRICT;
CREATE TABLE finding (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "code" TEXT,
    "part" TEXT,
    "grade" INTEGER,
    "height_m" REAL,
    "side_deg" REAL,
    "anchor" TEXT,
    "aspect_ratio" REAL,
    "cleared_by" TEXT,
    "cleared_on" TEXT,
    "note" TEXT
, "aloft" INTEGER) STRICT;
CREATE TABLE gear (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "name" TEXT,
    "kind" TEXT,
    "rating_kn" REAL,
    "diameter_mm" REAL,
    "length_m" REAL,
    "first_use" TEXT,
    "last_check" TEXT,
    "next_check" TEXT,
    "out_of_use" TEXT,
    "shock_loaded" INTEGER,
    "double_locking" INTEGER,
    "chin_strap" INTEGER,
    "used_by" TEXT
) STRICT;
CREATE TABLE house_value (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "rule_set" TEXT,
    "row" TEXT,
    "value" REAL,
    "by" TEXT,
    "on" TEXT,
    "why" TEXT
) STRICT;
CREATE TABLE inspection (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "visit" TEXT,
    "at" TEXT,
    "level" TEXT,
    "by" TEXT,
    "life" TEXT,
    "dead_since" TEXT,
    "beetle_killed" INTEGER,
    "dieback_pct" REAL,
    "wires_near" INTEGER,
    "base_sound" INTEGER,
    "height" TEXT,
    "girth" TEXT,
    "bark_cm" REAL,
    "lean" TEXT,
    "lean_is_new" INTEGER,
    "crown" TEXT,
    "slope" TEXT,
    "ground_dug" TEXT,
    "base_mallet" TEXT,
    "other_stems" TEXT,
    "note" TEXT,
    "next_look" TEXT
) STRICT;
CREATE TABLE judgement_cache (key TEXT PRIMARY KEY, site TEXT, value TEXT NOT NULL) STRICT;
CREATE TABLE logged_climb (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "on" TEXT,
    "place" TEXT,
    "height_m" REAL,
    "system" TEXT,
    "with_whom" TEXT,
    "note" TEXT
) STRICT;
CREATE TABLE near_miss (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "what" TEXT,
    "at" TEXT,
    "by" TEXT
) STRICT;
CREATE TABLE overhead_line (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "name" TEXT,
    "kind" TEXT,
    "voltage_kv" REAL,
    "voltage_between" TEXT,
    "height_m" REAL,
    "owner_told" TEXT,
    "dead_on" TEXT,
    "way" TEXT
) STRICT;
CREATE TABLE own_edit (
    no INTEGER PRIMARY KEY,
    site TEXT,
    after_seq INTEGER NOT NULL,
    last_seq INTEGER NOT NULL,
    taken_back INTEGER NOT NULL DEFAULT 0
, "command" TEXT) STRICT;
CREATE TABLE own_restored (change TEXT PRIMARY KEY, stands_for TEXT NOT NULL) STRICT, WITHOUT ROWID;
CREATE TABLE part_look (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "part" TEXT,
    "look" TEXT,
    "hidden_by" TEXT
) STRICT;
CREATE TABLE permission (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "kind" TEXT,
    "answer" TEXT,
    "on" TEXT,
    "tree" TEXT,
    "note" TEXT
) STRICT;
CREATE TABLE person (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "name" TEXT,
    "trainee" INTEGER,
    "mass_with_gear_kg" REAL,
    "height_limit_m" REAL,
    "throw_m" REAL,
    "electrical" TEXT
) STRICT;
CREATE TABLE photo (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "file" TEXT,
    "caption" TEXT,
    "finding" TEXT,
    "taken" TEXT,
    "position" TEXT,
    "direction_deg" REAL
) STRICT;
CREATE TABLE replaced (id TEXT PRIMARY KEY) STRICT, WITHOUT ROWID;
CREATE TABLE risk_entry (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "target" TEXT,
    "part" TEXT,
    "assessor" TEXT,
    "level" INTEGER,
    "time_frame_months" REAL,
    "failure" TEXT,
    "impact" TEXT,
    "consequences" TEXT
) STRICT;
CREATE TABLE setting (name TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT;
CREATE TABLE shell_reading (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "bearing_deg" REAL,
    "shell_cm" REAL,
    "se_cm" REAL,
    "method" TEXT,
    "drill_angle_deg" REAL
) STRICT;
CREATE TABLE sign_off (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "skill" TEXT,
    "knot" TEXT,
    "by" TEXT,
    "on" TEXT,
    "until" TEXT,
    "seconds" REAL
) STRICT;
CREATE TABLE signed_judgement (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "judgement" TEXT,
    "by" TEXT,
    "at" TEXT
) STRICT;
CREATE TABLE site (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "name" TEXT,
    "client" TEXT,
    "address" TEXT,
    "rule_set" TEXT,
    "outline" TEXT,
    "rescue" TEXT,
    "note" TEXT
) STRICT;
CREATE TABLE standing (
    change TEXT PRIMARY KEY, site TEXT, noun TEXT NOT NULL, record TEXT NOT NULL, field TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TABLE stem_section (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "height_m" REAL,
    "girth_cm" REAL,
    "diameter_cm" REAL,
    "bark_cm" REAL,
    "mallet" TEXT,
    "opening" TEXT,
    "note" TEXT
) STRICT;
CREATE TABLE target (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "name" TEXT,
    "kind" TEXT,
    "occupancy" TEXT,
    "can_be_moved" INTEGER,
    "can_be_closed" INTEGER,
    "neighbours" INTEGER,
    "form" TEXT,
    "ground" TEXT
) STRICT;
CREATE TABLE tree (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "tag" TEXT,
    "species" TEXT,
    "position" TEXT,
    "way" TEXT,
    "other_access" TEXT,
    "walk_order" INTEGER,
    "note" TEXT
) STRICT;
CREATE TABLE unread (
    change TEXT PRIMARY KEY, site TEXT, noun TEXT NOT NULL, record TEXT NOT NULL, field TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TABLE visit (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "day" TEXT,
    "crew" TEXT,
    "note" TEXT
) STRICT;
CREATE TABLE weather_hour (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "hour" INTEGER,
    "wind_ms" REAL,
    "wind_force" INTEGER,
    "temperature_c" REAL,
    "humidity_pct" REAL,
    "thunder_min_ago" REAL,
    "no_thunder" INTEGER,
    "ice" INTEGER,
    "wet_bark" INTEGER,
    "light" TEXT
) STRICT;
CREATE TABLE wire_distance (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "line" TEXT,
    "distance_m" REAL,
    "touching" INTEGER
) STRICT;
CREATE TABLE work (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "operation" TEXT,
    "priority" TEXT,
    "piece_length_m" REAL,
    "piece_mass_kg" REAL,
    "cut_height_m" REAL,
    "chainsaw_aloft" INTEGER,
    "note" TEXT
, "outcome" TEXT) STRICT;
CREATE INDEX anchor_point_parent ON anchor_point (parent);
CREATE INDEX anchor_point_site ON anchor_point (site);
CREATE INDEX change_record ON change (noun, record);
CREATE INDEX climb_plan_parent ON climb_plan (parent);
CREATE INDEX climb_plan_site ON climb_plan (site);
CREATE INDEX finding_parent ON finding (parent);
CREATE INDEX finding_site ON finding (site);
CREATE INDEX inspection_parent ON inspection (parent);
CREATE INDEX inspection_site ON inspection (site);
CREATE INDEX judgement_cache_site ON judgement_cache (site);
CREATE INDEX logged_climb_parent ON logged_climb (parent);
CREATE INDEX near_miss_parent ON near_miss (parent);
CREATE INDEX near_miss_site ON near_miss (site);
CREATE INDEX overhead_line_parent ON overhead_line (parent);
CREATE INDEX overhead_line_site ON overhead_line (site);
CREATE INDEX own_edit_site ON own_edit (site, no);
CREATE INDEX part_look_parent ON part_look (parent);
CREATE INDEX part_look_site ON part_look (site);
CREATE INDEX permission_parent ON permission (parent);
CREATE INDEX permission_site ON permission (site);
CREATE INDEX photo_parent ON photo (parent);
CREATE INDEX photo_site ON photo (site);
CREATE INDEX risk_entry_parent ON risk_entry (parent);
CREATE INDEX risk_entry_site ON risk_entry (site);
CREATE INDEX shell_reading_parent ON shell_reading (parent);
CREATE INDEX shell_reading_site ON shell_reading (site);
CREATE INDEX sign_off_parent ON sign_off (parent);
CREATE INDEX signed_judgement_parent ON signed_judgement (parent);
CREATE INDEX signed_judgement_site ON signed_judgement (site);
CREATE INDEX site_site ON site (site);
CREATE INDEX standing_record ON standing (noun, record);
CREATE INDEX stem_section_parent ON stem_section (parent);
CREATE INDEX stem_section_site ON stem_section (site);
CREATE INDEX target_parent ON target (parent);
CREATE INDEX target_site ON target (site);
CREATE INDEX tree_parent ON tree (parent);
CREATE INDEX tree_site ON tree (site);
CREATE INDEX unread_record ON unread (noun, record);
CREATE INDEX visit_parent ON visit (parent);
CREATE INDEX visit_site ON visit (site);
CREATE INDEX weather_hour_parent ON weather_hour (parent);
CREATE INDEX weather_hour_site ON weather_hour (site);
CREATE INDEX wire_distance_parent ON wire_distance (parent);
CREATE INDEX wire_distance_site ON wire_distance (site);
CREATE INDEX work_parent ON work (parent);
CREATE INDEX work_site ON work (site);
