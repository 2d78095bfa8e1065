# The house on one page, read by the build and by tests/cli/doors_test.py.
#
# room(<name> [USES rooms...] [DOORS headers...]): a folder of src. Other rooms may include its doors
# and nothing else of it; it may include the doors of the rooms it uses. An inner room stands in a
# room, `geometry/files`; who uses a room may enter by the doors of all its inner rooms, these only by
# what they name themselves. Tests may look behind a door. A room of PROGRAMS is no library: its own
# CMakeLists.txt builds a program of each inner room.

room(units
  DOORS advice_text angle bounded_text complaint_facts fields file_writing guarded_json learned_values
        letters money nearest_name number_text present_moment printing quantity question rate read_once reading remark rounded_text rounding
        share share_of shown_text spelling stream_writing temperature text_places unfinished_files user_error
        usual_measures water weight_text working wording written_number)

room(sandbox
  DOORS child_start helper_program job_bytes limited_work)

room(trade
  USES units
  DOORS amount amount_text buying fraction pack pricing printed)

room(days
  USES units
  DOORS calendar schedule work)

room(records
  USES units trade
  DOORS act as_of_now batch_code batch_cost batches batches_in_brief blanks content_hash exchange half_made lot_use lots note notes noting
        overview pieces plans poured_from records weighing)
room(schemas
  USES units
  DOORS kinds tidying value_editing)

room(geometry USES units sandbox)
room(geometry/surface
  DOORS disjoint_sets enclosed_volume large_pages mesh_bytes mesh_error parallel place_table seeded_hash
        shell_nesting surface_edges triangle_distance triangle_mesh vectors weld)
room(geometry/files
  USES geometry/surface
  DOORS imported_mesh mesh_file mesh_format mesh_writing)
room(geometry/sections
  USES geometry/surface
  DOORS facet_deficit filled_part plane_cut)
room(geometry/exact
  USES geometry/surface geometry/files
  DOORS convex_hull shell_union solid_union)
room(geometry/distance
  USES geometry/surface
  DOORS placement surface_tree)
room(geometry/exposure
  USES geometry/surface
  DOORS exposed_surface)
room(geometry/beads
  USES geometry/surface
  DOORS bead)
room(geometry/levels
  USES geometry/surface geometry/files geometry/sections
  DOORS facet_curve level_curve tilted_pour)
room(geometry/repair
  USES geometry/surface geometry/files geometry/exact
  DOORS mesh_inspection sound_solid)
room(geometry/pockets
  USES geometry/surface geometry/levels
  DOORS pockets)
room(geometry/packing
  USES geometry/surface geometry/distance
  DOORS packing)

room(moulds
  USES units schemas geometry
  DOORS casting_box fit library measured_ways mesh_cavity mesh_memory mould mould_file mould_solid
        mould_workings near_file poured_factor)
room(chemistry
  USES units schemas
  DOORS alkali_data alkali_form alkali_names batter_density density_workings fat fat_blend fat_density fat_search
        fats formula formula_file fragrance_allergens heat_findings heat_workings inci inci_data
        least_batch liquid_water liquids lye_need lye_solution lye_workings name_words one_material
        proportions rate_cautions salts superfat theoretical_value user_fats water_names)
room(planning
  USES units schemas geometry moulds chemistry
  DOORS blanks cost cure cut day_lye embed_solid fill_level hours_in_mould lye_pot measure_memory measured_piece piece plan run
        scales share_superfat shared_pot tally tips together topping usual_bench weighed_lye weighing workings)
room(learning
  USES units schemas geometry moulds chemistry planning
  DOORS batch_facts figures learned)
room(costing
  USES units planning trade
  DOORS order_quote quote selling)
room(runs
  USES units schemas geometry moulds chemistry planning trade costing days
  DOORS days_reading level_reading named_files order_file packaging_reading run_file selling_reading studio_file
        substitutes supplies)
room(reports
  USES units sandbox geometry moulds chemistry planning learning trade costing days records
  DOORS bench_sheet brief buying_report calendar_file catalogue_report csv_table day_lack days_report drawing
        gauge_report inspection_report label_report learned_report lye_of_day made_lye_report mould_picture note_report
        packing_report piece_picture
        plan_report plan_words quote_report ready_report records_report sheet_blocks sheet_bytes sheet_html sheet_pdf
        stock_report together_report trail_report ways_report weigh_out workings_report)
room(service
  USES units schemas sandbox geometry moulds chemistry planning learning trade costing days records runs reports
  DOORS pouring_orders requests service shown_batch)
room(desk
  USES units schemas moulds records service
  DOORS answers desk reception request workspace)
room(web
  USES units sandbox moulds service desk
  DOORS web)
room(cli
  USES units moulds service web)

room(helpers PROGRAMS
  USES units sandbox geometry reports)
room(helpers/import)
room(helpers/pdf)
room(helpers/unite)
