package bolewalk.app

import java.io.File
import org.json.JSONArray
import org.json.JSONObject

/** The demo property, brought into the open book as a person brings in a site file, with the photos that lie beside the
 *  tests. */
object Demo {
    /** In the middle of its second visit. */
    const val DAY = "2026-05-19T15:10:00-04:00"

    private val property get() = File(root, "core/src/bin/bolewalk/demo/property.json")
    private val photos get() = File(root, "mobile-android/app/src/test/photos")

    fun bringIn() {
        val folder = File(app.cacheDir, "demo").apply { mkdirs() }
        photos.copyRecursively(folder, overwrite = true)
        val file = JSONObject(property.readText())
        file.getJSONObject("site").objects("trees").flatMap { it.objects("inspections") }.forEach { looked ->
            looked.put("photos", JSONArray(looked.objects("photos").filter { File(folder, it.getString("file")).exists() }))
        }
        val site = File(folder, "property.json").apply { writeText(file.toString()) }
        app.keeper.book().importSiteFile(site.path)
    }

    private fun JSONObject.objects(name: String): List<JSONObject> =
        optJSONArray(name)?.let { list -> List(list.length()) { list.getJSONObject(it) } }.orEmpty()
}
