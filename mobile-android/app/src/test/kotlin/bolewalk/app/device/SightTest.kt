package bolewalk.app.device

import android.Manifest.permission.CAMERA
import android.content.pm.PackageManager
import android.graphics.ImageFormat
import android.graphics.SurfaceTexture
import android.hardware.camera2.CameraCharacteristics
import android.hardware.camera2.CameraManager
import android.util.Size
import android.view.Surface
import bolewalk.app.app
import bolewalk.app.look.shape
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.Shadows.shadowOf
import org.robolectric.shadows.ShadowCameraCharacteristics
import org.robolectric.shadows.StreamConfigurationMapBuilder

/** The live picture, by the framework's camera service. */
@RunWith(RobolectricTestRunner::class)
class SightTest {
    private val cameras = app.getSystemService(CameraManager::class.java)!!
    private val heard = Heardings<SightPicture>()

    private fun eye(id: String, facing: Int) {
        val about = ShadowCameraCharacteristics.newCameraCharacteristics()
        val sizes = StreamConfigurationMapBuilder.newBuilder()
            .addOutputSize(ImageFormat.PRIVATE, Size(4000, 3000)).addOutputSize(ImageFormat.PRIVATE, Size(1280, 960))
            .addOutputSize(ImageFormat.PRIVATE, Size(1280, 720)).addOutputSize(ImageFormat.PRIVATE, Size(640, 480)).build()
        shadowOf(about).apply {
            set(CameraCharacteristics.LENS_FACING, facing)
            set(CameraCharacteristics.SENSOR_ORIENTATION, 90)
            set(CameraCharacteristics.SCALER_STREAM_CONFIGURATION_MAP, sizes)
        }
        shadowOf(cameras).addCamera(id, about)
    }

    @Test fun theEyeAtTheBackIsShown() {
        shadowOf(app).grantPermissions(CAMERA)
        eye("0", CameraCharacteristics.LENS_FACING_FRONT)
        eye("1", CameraCharacteristics.LENS_FACING_BACK)
        val phone = OnPhone()
        val watching = phone.device.sight.watch(SurfaceTexture(0), heard)
        phone.settle { heard.last != null }
        assertEquals(SightPicture(1280, 960, 90), (heard.last as Heard.Value).value)
        watching.stop()
        watching.stop()
    }

    @Test fun theCameraIsAskedForAndItsRefusalIsHeard() {
        eye("1", CameraCharacteristics.LENS_FACING_BACK)
        val phone = OnPhone()
        phone.device.sight.watch(SurfaceTexture(0), heard)
        val asked = shadowOf(phone.window).lastRequestedPermission
        assertEquals(listOf(CAMERA), asked.requestedPermissions.toList())
        phone.answer(asked.requestCode, asked.requestedPermissions, PackageManager.PERMISSION_DENIED)
        assertEquals(Heard.Refused, heard.last)
    }

    @Test fun anotherAppTakesTheCamera() {
        shadowOf(app).grantPermissions(CAMERA)
        eye("1", CameraCharacteristics.LENS_FACING_BACK)
        val phone = OnPhone()
        phone.device.sight.watch(SurfaceTexture(0), heard)
        phone.settle { heard.last != null }
        shadowOf(cameras).removeCamera("1")
        shadowOf(cameras).triggerDisconnect()
        phone.settle { heard.last == Heard.Off }
    }

    @Test fun aPhoneWithoutSuchAnEyeSaysSo() {
        shadowOf(app).grantPermissions(CAMERA)
        eye("0", CameraCharacteristics.LENS_FACING_FRONT)
        val sight = OnPhone().device.sight
        assertTrue(sight.lacking)
        sight.watch(SurfaceTexture(0), heard)
        assertEquals(listOf(Heard.Lacking), heard.all)
    }

    @Test fun thePictureIsOfTheSensorsShapeAndNotTooLarge() {
        assertEquals(Size(1280, 960), previewSize(listOf(Size(1280, 720), Size(4000, 3000), Size(1280, 960), Size(640, 480))))
        assertEquals(Size(1280, 720), previewSize(listOf(Size(1920, 1080), Size(1280, 720))))
        assertEquals(Size(4000, 3000), previewSize(listOf(Size(4000, 3000))))
        assertNull(previewSize(listOf()))
    }

    @Test fun theShapeFollowsThePhone() {
        val picture = SightPicture(1280, 960, 90)
        assertEquals(0.75f, shape(picture, Surface.ROTATION_0), 0.001f)
        assertEquals(1.333f, shape(picture, Surface.ROTATION_90), 0.001f)
        assertEquals(1.333f, shape(SightPicture(1280, 960, 0), Surface.ROTATION_0), 0.001f)
        assertEquals(0.75f, shape(null, Surface.ROTATION_180), 0.001f)
    }
}
